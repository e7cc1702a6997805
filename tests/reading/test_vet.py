"""The vet: to look, not needed, or only spoken of; every way of saying so.

The forms are common practice of speech, no source.
"""

from __future__ import annotations

import pytest

from tests.reading.conftest import Read, reads

TO_LOOK = """\
Vet's going to be rung about the off fore
The vet is going to be phoned in the morning
The vet's gonna be called
The vet's going to have to see it
Tally has to see the vet about that
The vet's getting a call from me tonight
The vet'll get a ring in the morning
The vet sahib will come and see her tomorrow
The vet lady's coming to look at the off fore
The vet man should take a look at that foot
She'd better see the vet
He's got to see a vet with it
He ought to see their vet
The vet should see that foot
Vet should take a look at the left front
The vet needs to come out
Vet has to film it
Vet's got to see her this week
Vet has got to look at him
The vet is to be rung this evening
The vet's to be phoned tonight
The vet will want to see that
Vet will have to x ray it
I want their vet to see it
I want the vet back to him
I want the vet out
I'd like the vet to see that hind
I'd want the vet's eyes on it
I'd get the vet
Get the vet to him
Told them to get the vet
Told her to ring the vet
I told the owner to phone her vet
They're to call the vet
They need to call their vet
They'll have to get the vet in
She's going to call the vet
He's going to have the vet out
Owner's ringing the vet tonight
Owner will call the vet in the morning
If he's no easier by Sunday it's the vet
If it's still hot Friday, it's a vet job
If she's no better the vet gets called
If it's not busted open by Wednesday they're getting the vet
If he's worse call the vet
If he's worse tomorrow they need to get the vet
Should it climb any they call the vet
No better by Tuesday, vet
Worse and it's the vet
That's one for the vet
That's a job for the vet
It wants the vet
It needs a vet
She needs a vet to look at that
He needs to see a vet
I think the vet ought to look at it
The vet must look at her, I said so
The vet wants calling
The vet wants ringing about that foot
The vet should be called
Have the vet check that
Have the vet block that foot
Have the vet shoot films
Have their vet take pictures
Ask the vet to look at it
Ask the vet about that swelling
Best let the vet look at it
Let the vet see it before I do more
I'd say vet
Refer to vet
Vet to check
Vet to x ray the near fore
Vet to film that hind
Vet to come
Recommend the vet
I recommended the vet
I recommended they have the vet out
I've asked for the vet
Asked them to have the vet see it
Vet's coming Tuesday to look at it
The vet's coming out to look at it tomorrow
I said get the vet out today
Send for the vet
Call the vet if it's not draining by Friday
Ring the vet if she goes lame
I'd have a vet look at that
Wants a vet to look at it
Told them vet, today
Get it x rayed by the vet
Need the vet on this one
Nothing more from me till the vet's seen it
I won't touch it till the vet's been
Leave it for the vet
Get the vet to have a look
I want the vet to go over him again
Their vet ought to see her
The vet needs to have another look
He'll need the vet
She'll want the vet
That needs the vet's eye
The vet's to look at it
Vet check needed
Needs a vet check
"""

NOT_NEEDED = """\
The vet's not going to be called
She doesn't have to see the vet
No need for the vet
No need of the vet
No need to call the vet
No need for a vet
No vet needed
Vet not needed
No vet
No vet this time
Don't need the vet
Doesn't need the vet
He doesn't need a vet
They don't need the vet for it
They won't need the vet for this one
We won't be needing the vet
Won't need the vet
I don't think he needs the vet
I don't think the vet needs to see it
I don't see a need for the vet
I see no need for the vet
I wouldn't trouble the vet
I wouldn't bother the vet with it
I wouldn't call the vet
I wouldn't bother with the vet
I wouldn't be ringing the vet over it
No call for the vet
There's no call for the vet
No call for a vet
No reason to call the vet
No reason to bother the vet
No reason to trouble the vet
Nothing for the vet
Nothing for the vet here
Nothing the vet need see
Nothing the vet needs to see
Nothing a vet needs to look at
Nothing to trouble the vet with
Nothing to bother the vet about
Nothing that needs the vet
Nothing here needs a vet
Not a vet job
Not one for the vet
It's not a job for the vet
Not worth a vet call
Not worth calling the vet
Not worth the vet
No sense calling the vet
No point ringing the vet
No point in calling the vet
The vet needn't come
The vet needn't look at it
The vet doesn't need to see him
Vet doesn't need to look at it
The vet isn't needed
The vet won't be needed
Vet isn't needed
Skip the vet this time
Skip the vet, no need
Leave the vet out of it
Can do without the vet
He can do without the vet
I told her she didn't need the vet
Told them not to bother the vet
Told her no vet
Told her not to call the vet
No need to have the vet out
No need to get the vet back
No need to ring the vet
Needn't ring the vet
Needn't trouble the vet
You needn't call the vet
Don't call the vet
Don't bother the vet
Should they call the vet, I said no
The vet can stay home
No referral
No referral needed
I'm not sending her to the vet
I'm not calling the vet for that
Not calling the vet yet
"""

SPOKEN_OF = """\
I have to see the vet about my dog
I've got to see the vet myself on Friday
Good to see the vet there for once
The vet's going to a wedding
The vet said it's navicular
Vet's films say navicular
The vet was out last week
Vet came out Monday
The vet had him sedated
Their vet had him sedated before I pulled in
The vet sedated him
The vet told them it was an abscess
Vet saw her in March
The vet drained it last week
Vet x rayed it in May
The vet's x rays show rotation
The vet's happy with him
Vet thinks it's the suspensory
Owner's a vet
Her vet put her on it
The vet called it a two out of five
The vet asked me to put a bar shoe on
The vet wants a bar shoe on it
Vet wants three degree wedges
The vet wanted egg bars
Per the vet, egg bars on the fronts
As the vet asked
Vet's orders
According to the vet it's navicular
I talked to the vet about it last time
The vet bill was four hundred
The vet's truck was in the way
The vet and me had a talk last visit
She married a vet
The vet passed him in spring
"""


def said_of_vet(read: Read, sentence: str) -> list[str]:
    """The statuses of what is kept of the vet."""
    visits = read(f"Tally, left front. {sentence}.", "Tally")
    return [fact.status.value for visit in visits for fact in visit.facts if fact.slot == "vet"]


@pytest.mark.parametrize("sentence", TO_LOOK.splitlines())
def test_to_look(read: Read, sentence: str) -> None:
    assert said_of_vet(read, sentence) == ["planned"]


@pytest.mark.parametrize("sentence", NOT_NEEDED.splitlines())
def test_not_needed(read: Read, sentence: str) -> None:
    assert said_of_vet(read, sentence) == ["absent"]


@pytest.mark.parametrize("sentence", SPOKEN_OF.splitlines())
def test_only_spoken_of(read: Read, sentence: str) -> None:
    assert said_of_vet(read, sentence) == []


CONDITIONS = """\
If it ain't popped by Sunday they're calling the vet
If it hasn't broke by Sunday they call the vet
If there's no ease by Thursday they're to ring the vet
Not walking better tomorrow they get the vet
"""


@pytest.mark.parametrize("sentence", CONDITIONS.splitlines())
def test_a_denied_condition_does_not_deny_the_vet(read: Read, sentence: str) -> None:
    assert said_of_vet(read, sentence) == ["planned"]


@pytest.mark.parametrize(
    "said",
    [
        "No vet has seen it. I told her to ring one",
        "She hasn't got a vet. I told her to ring one",
        "They've no vet. Told them to phone one tonight",
        "The vet's not been out, so I told them to get one out today",
    ],
)
def test_a_vet_spoken_of_is_the_one_to_be_called(read: Read, said: str) -> None:
    assert said_of_vet(read, said) == ["planned"]


@pytest.mark.parametrize(
    ("said", "status"),
    [
        ("She asked about the vet. I said there's no need to ring one", ["absent"]),
        ("She asked me about a vet. I'd not ring one for that", ["absent"]),
        ("No vet has looked at it", []),
        ("They haven't got a vet", []),
        ("The vet was here last week. I told her to ring me", []),
        ("Two saddles were tried on. I told her to get one", []),
        ("She wants a physio. I told her to ring one", []),
    ],
)
def test_none_is_to_be_called(read: Read, said: str, status: list[str]) -> None:
    assert said_of_vet(read, said) == status


@pytest.mark.parametrize(
    ("said", "status"),
    [
        ("I wouldn't let the vet away without looking at that foot, so they're to ring him", ["planned"]),
        ("The vet's the man for that, she should ring him", ["planned"]),
        ("I don't like it, and no more does the vet", []),
        ("I wouldn't rush it, nor would the vet", []),
        ("He doesn't need shoes, nor does the vet need to come", ["absent"]),
        ("She spoke to the vet, and I'm to ring him with the measurements", []),
    ],
)
def test_the_vet_agrees_or_is_to_be_rung(read: Read, said: str, status: list[str]) -> None:
    assert said_of_vet(read, said) == status


test_the_vet_comes_first = reads(
    [
        (
            "Soaked the near fore, and the vet sees him before I cut any deeper.",
            ["- vet referral planned", "LF treatment soak"],
        ),
        ("Vet has a look at it first.", ["- vet referral planned"]),
        ("The vet looks at him before I do any more.", ["- vet referral planned"]),
        ("The vet sees her every month, before I come.", []),
        ("The vet saw her before I came.", []),
        ("The vet looks after the pony first.", []),
        ("If the vet sees him first I'll wait.", []),
    ],
    "Tansy. {}",
)

test_he_might_as_well = reads(
    [
        ("The vet might as well take a picture next time she's out.", ["- vet referral planned"]),
        ("Vet may as well have a look at that.", ["- vet referral planned"]),
        ("The vet might as well have stayed at home.", []),
        ("The vet might as well not come.", []),
    ],
    "Tansy. {}",
)

test_vet_from_afar = reads(
    [
        ("The vet needs to fly in and see him before anybody does anything.", ["- vet referral planned"]),
        ("The vet's to drive out and look at that.", ["- vet referral planned"]),
        ("No need for the vet to drive out.", ["- vet referral absent"]),
    ],
    "Tally. {}",
)

test_thought_of_and_not_needed = reads(
    [
        ("I was thinking about calling the vet but there's no need.", ["- vet referral absent"]),
        ("I was going to ring the vet, but there was no need for it.", ["- vet referral absent"]),
        ("I considered having the vet look at her but it isn't necessary.", ["- vet referral absent"]),
        ("I thought about the vet, but we won't need him.", ["- vet referral absent"]),
        ("I was thinking about calling the vet. There's no need.", ["- vet referral absent"]),
        ("They're to call the vet but there's no need to rush.", ["- vet referral planned"]),
        ("They're to call the vet. There's no need for pads.", ["- vet referral planned"]),
    ],
    "Tally. {}",
)

test_one_for_the_vet = reads(
    [
        ("That's one for the vet, I've told them to ring today.", ["- vet referral planned"]),
        ("One for the vet, that.", ["- vet referral planned"]),
        ("I told them to get on to the vet.", ["- vet referral planned"]),
        ("I said ring the vet.", ["- vet referral planned"]),
        ("Get on to your vet, I said.", ["- vet referral planned"]),
        ("It's one for the vets.", ["- vet referral planned"]),
        ("That one's for the vet, I've told them.", ["- vet referral planned"]),
        ("A vet case, that.", ["- vet referral planned"]),
        ("Not a vet case.", ["- vet referral absent"]),
        ("That one's not for the vet.", ["- vet referral absent"]),
        ("That's not one for the vet.", ["- vet referral absent"]),
        ("That's one for the dentist.", []),
        ("My lad had a dog did the same thing on a rake.", []),
    ],
    "Tansy. {}",
)

test_who_suspects_it_and_comes_to_look = reads(
    [
        (
            "The off fore, the vet suspects a keratoma, at the toe, and he's coming out to look at it.",
            ["- vet referral planned", "RF finding keratoma suspected @toe"],
        ),
        (
            "The vet reckons it's navicular, left front, and she's coming back to x-ray it.",
            ["- vet referral planned", "LF finding navicular suspected"],
        ),
        (
            "The vet suspects ringbone, and he'll be out to look at it Tuesday.",
            ["- finding ringbone suspected", "- vet referral planned"],
        ),
        ("Vet suspects navicular in the near fore.", ["LF finding navicular suspected"]),
        ("Off fore, owner suspects an abscess.", ["RF finding abscess suspected"]),
        ("None of it needs the vet.", ["- vet referral absent"]),
        # nobody is called, and nobody is not needed
        (
            "Dropped sole on the left front, no rotation in that foot per the vet.",
            ["LF finding dropped_sole", "LF finding rotation absent"],
        ),
        ("Not founder as per the vet.", ["- finding laminitis absent"]),
        ("No rotation in the left front according to the vet.", ["LF finding rotation absent"]),
        ("Vet says keratoma in the off fore and he's not coming out to look at it.", ["RF finding keratoma"]),
        ("The vet says it's fine, and I'm coming back to look at it.", []),
        ("The vet found a corn in the off fore, and he came out to look at it.", ["RF finding corn"]),
    ],
    "Tally. {}",
)

test_calling_in = reads(
    [
        (
            "Five weeks, and if that heel isn't any tighter I'm calling in the vet.",
            ["- next_visit_weeks 5 planned", "- vet referral planned"],
        ),
        ("Unless he improves I'm bringing the vet in.", ["- vet referral planned"]),
        ("I'm not calling in the vet.", ["- vet referral absent"]),
        # so many years are no feet
        (
            "Navicular in the off fore these three years, but not a thing on the testers in that one.",
            ["RF finding navicular", "RF tester none"],
        ),
        (
            "Sidebone in the off fore these two years, testers nothing in that one.",
            ["RF finding sidebone", "RF tester none"],
        ),
    ],
    "Tansy. {}",
)

test_the_vet_needs_to_get_out = reads(
    [
        ("Trimmed all round. The vet needs to get out here.", ["- vet referral planned", "LF+RF+LH+RH work trim"]),
        ("Trimmed all round. Vet has to get over to see him.", ["- vet referral planned", "LF+RF+LH+RH work trim"]),
        ("Trimmed all round. Vet needs to see this.", ["- vet referral planned", "LF+RF+LH+RH work trim"]),
        ("Trimmed all round. No need for the vet to get out.", ["- vet referral absent", "LF+RF+LH+RH work trim"]),
        ("Trimmed all round. The vet needs to get paid.", ["LF+RF+LH+RH work trim"]),
        ("Trimmed all round. The vet couldn't get out here.", ["LF+RF+LH+RH work trim"]),
    ]
)
