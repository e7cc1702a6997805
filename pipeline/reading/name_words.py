"""Little words around names: what is never a horse's name, what may follow one, and animals that are no horses."""

from __future__ import annotations

ANIMALS = frozenset(
    [
        "dog", "dogs", "cat", "pup", "puppy", "bitch", "terrier", "collie", "sheepdog", "goat", "donkey", "rooster",
        "hen", "kelpie", "heeler", "spaniel", "lurcher", "labrador", "lab", "parrot", "pig", "sheep", "lamb", "calf",
        "cow", "bull", "mouse", "kitten", "helper", "apprentice", "groom",
    ]
)  # fmt: skip
# "Paint gelding" and "bay mare" describe a horse, also where a recogniser writes them large.
HORSE_WORDS = frozenset(
    [
        "gelding", "mare", "stallion", "colt", "filly", "pony", "horse", "cob", "foal", "yearling", "mule", "mini",
        "weanling", "broodmare", "hunter", "cross",
    ]
)  # fmt: skip
# What a horse that nobody names is called; "hunter" and "cross" describe one and stand for none.
HORSE_NOUNS = (HORSE_WORDS - {"hunter", "cross"}) | {"donkey", "jenny", "youngster", "draft"}
NEVER_NAMES = frozenset(
    [
        "i", "lane", "road", "street", "avenue", "man", "boy", "lord", "jeez", "gosh", "folks", "lads", "nobody",
        "somebody", "everybody", "everyone", "anyway", "aye", "monday", "tuesday", "wednesday", "thursday", "friday",
        "saturday", "sunday", "january", "february", "march", "april", "may", "june", "july", "august", "september",
        "october", "november", "december", "christmas", "easter", "obel", "aaep", "henneke", "bcs", "mr", "mrs", "ms",
        "miss", "doc", "dr", "mum", "mam", "mom", "mummy", "mammy", "mommy", "dad", "grandad", "granddad", "grandma",
        "grandpa", "granny", "auntie", "uncle", "shoe", "shoes", "pad", "pads", "hoof", "foot", "feet",
    ]
)  # fmt: skip
NAME_FOLLOWERS = frozenset(
    {
        ",", ".", "'s", "had", "has", "is", "was", "first", "then", "next", "stood", "threw", "lost", "today", "came",
        "got", "went", "cast", "pulled", "at", "on", "in", "and", ":", ";", "needs", "again", "here", "now",
    }
)  # fmt: skip

# A word alone that ends so is a remark, not an unknown horse ("Typical." stands in vocab/remarks.csv).
REMARK_ENDINGS = ("ful", "ous", "able", "ible", "ive", "ingly", "fully", "ously", "ably", "ibly")
# Whose kin a horse is, and what it is called then.
KIN_SEXES = {
    "mother": "she", "dam": "she", "sister": "she", "daughter": "she",
    "father": "he", "sire": "he", "brother": "he", "son": "he",
}  # fmt: skip
