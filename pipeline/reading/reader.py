"""The reader: a memo's words become visits with facts, in a row of spaCy components with one responsibility each."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date

from pipeline.reading.as_the_other import ask_contrary
from pipeline.reading.assertions import assert_all
from pipeline.reading.bare_sides import mark_bare_sides, mark_both_of_a_side, mark_ends_of_a_side, pair_behind
from pipeline.reading.broken_off import mend_broken_off
from pipeline.reading.cleft import set_foot_right, take_up
from pipeline.reading.clipped import (
    complete_beside,
    complete_clipped,
    complete_headed,
    complete_kinds,
    complete_little,
    complete_parts,
    complete_same,
    complete_told,
)
from pipeline.reading.collector import collector_at_rest, leave_what_is_loaded
from pipeline.reading.conditions import mark_named
from pipeline.reading.copies import copy_statements, inherit_status
from pipeline.reading.crossed import uncross
from pipeline.reading.cut_out import draft_cut_out
from pipeline.reading.dates import draft_dates
from pipeline.reading.dealt_weeks import deal_weeks
from pipeline.reading.decided import decide
from pipeline.reading.drafting import draft_tips, draft_white_line, draft_words, name_white_line
from pipeline.reading.excepted import mark_exceptions
from pipeline.reading.feet import attach_feet
from pipeline.reading.foot_names import join_feet, mark_counted_feet
from pipeline.reading.going_short import draft_short
from pipeline.reading.graded_again import draft_again
from pipeline.reading.headings import join_headings, pads_under_heading, take_noughts
from pipeline.reading.horse_flags import horse_flags
from pipeline.reading.horses import HorseFinder
from pipeline.reading.in_order import deal_in_order, draft_in_order, mark_short_feet
from pipeline.reading.measures import MeasureReader
from pipeline.reading.measures_then import draft_measures_then
from pipeline.reading.mentions import Mention, MentionFinder
from pipeline.reading.misnamed import (
    another_horses_number,
    called_before,
    found_on_another,
    leave_out_told_by,
    misnamed,
    without_animals,
)
from pipeline.reading.missing_shoes import draft_came_without, draft_gone
from pipeline.reading.nailed import draft_nailed
from pipeline.reading.new_shoes import draft_new
from pipeline.reading.not_every import drop_not_every, mark_not_counted_out, mark_not_every
from pipeline.reading.not_that import just_that_foot
from pipeline.reading.notes import not_understood, notes_of, nothing_told
from pipeline.reading.off_by_the_horse import draft_off_by_the_horse
from pipeline.reading.one_of_a_pair import (
    mark_one_of_several,
    name_one_of_a_pair,
    name_the_foot_of_the_end,
    take_foot_of_one,
)
from pipeline.reading.or_was_it import answer_own_question, deny_own_question
from pipeline.reading.other_animals import drop_another_horses, mark_others
from pipeline.reading.other_side import complete_sides
from pipeline.reading.passive import draft_passive
from pipeline.reading.places import complete_places, leave_out_named_places, leave_out_places
from pipeline.reading.pointed_out import point_out
from pipeline.reading.pronouns import draft_pronouns
from pipeline.reading.pulled import (
    draft_came_off,
    draft_coming_off,
    draft_left_behind,
    draft_off_it_came,
    draft_pulled,
    draft_pulled_by_hand,
    draft_renewed,
    draft_shoe_off,
    draft_thrown_there,
)
from pipeline.reading.questions import mark_sought
from pipeline.reading.repair_cues import join_cue_sentences
from pipeline.reading.repairs import repair
from pipeline.reading.responses import draft_responses
from pipeline.reading.roster_names import HorseTalk, NamedHorse, name_mentions, roster_spans
from pipeline.reading.rotations import draft_rotations
from pipeline.reading.run_on import part_horses
from pipeline.reading.said_of_foot import foot_said_before
from pipeline.reading.same_place import attach_same_places
from pipeline.reading.seams import mark_seams
from pipeline.reading.segments import split_segments
from pipeline.reading.settling import Settled, settle
from pipeline.reading.stops import soften_stops
from pipeline.reading.strikes import Strike, carry_out
from pipeline.reading.talk import Draft, Segment, Talk, by_sentence
from pipeline.reading.the_other import leave_the_one, mark_the_other
from pipeline.reading.three_feet import mark_full_sets, mark_three_of_four
from pipeline.reading.times import draft_times
from pipeline.reading.tokens import tokenize
from pipeline.reading.told_apart import both_on_this_one
from pipeline.reading.treated import treat_what_is_there
from pipeline.reading.turned_round import turn_round
from pipeline.reading.turned_to import part_turns
from pipeline.reading.unnamed_weeks import deal_unnamed_weeks
from pipeline.reading.vet import draft_vet, draft_vet_answered
from pipeline.reading.vet_addressed import draft_vet_addressed
from pipeline.reading.vet_wished import draft_vet_wished
from pipeline.reading.whose_number import draft_whose_number
from pipeline.reading.zones import attach_severity, attach_zones
from pipeline.record import FlagKind, HorseMatch, MatchKind, RosterHorse, Transcript, Visit
from pipeline.vocabulary import CLASS_SLOTS, Vocabulary

_SEVERAL = 2
_FAR = 25  # tokens from a fact at which its words are quoted no more


class Reader:
    """Reads transcripts. Loading builds the matchers once; ``read`` keeps no state between memos."""

    def __init__(self, vocabulary: Vocabulary) -> None:
        self._roles = vocabulary.spoken("clause_words")
        self._vocabulary = vocabulary
        self._common = common_words(vocabulary, vocabulary.classes)
        self._of_feet = common_words(vocabulary, {*CLASS_SLOTS, "feet", "zones", "measures"} & set(vocabulary.classes))
        self._finders: dict[bool, MentionFinder] = {}

    def read(self, transcript: Transcript, roster: Sequence[RosterHorse], day: date) -> list[Visit]:
        """The visits of one memo, in the order in which the horses are named; never empty."""
        with collector_at_rest():
            return self._visits(transcript, roster, day)

    def _visits(self, transcript: Transcript, roster: Sequence[RosterHorse], day: date) -> list[Visit]:
        talk, horses = self.parse(transcript, roster, day)
        finder = horses.found
        named = finder.horses or [NamedHorse(None, HorseMatch.UNCLEAR)]
        visits, dealt = [], _deal(talk, horses)
        for index, horse in enumerate(named):
            segments = [s for s in talk.segments if s.horse in (index, -1 if index == 0 else index)]
            drafts = dealt.get(index, [])
            visit = _visit(transcript, talk, horse, day, settle(drafts), segments)
            visit.flags[:0] = horse_flags(transcript, talk, horse, roster, finder)
            visits.append(visit)
        talk.close()
        if transcript.heard:
            nothing_told(transcript, visits)
        return _without_empty(visits)

    def _finder(self, heard: bool) -> MentionFinder:
        """The matchers for typed or heard text, built when first needed."""
        if heard not in self._finders:
            self._finders[heard] = MentionFinder(self._vocabulary, sound_alikes=heard)
            leave_what_is_loaded()
        return self._finders[heard]

    def _roles_in(self, words: Sequence[str], mentions: Sequence[Mention]) -> list[str | None]:
        """What each word does in its clause; the "left" of "left front" is no verb."""
        roles = list(map(self._roles.get, words))
        for index in (i for m in mentions if "feet" in m.readings for i in m.literal):
            roles[index] = None
        return roles

    def parse(
        self, transcript: Transcript, roster: Sequence[RosterHorse], day: date | None = None
    ) -> tuple[Talk, HorseFinder]:
        """The memo with every draft settled as to foot, zone and status; for ``read`` and the explain view.

        Without ``day`` no day of the calendar is resolved.
        """
        tokens = tokenize(transcript.text)
        finder = self._finder(transcript.heard)
        exact = roster_spans(tokens, roster, self._of_feet)
        mentions = finder.find(tokens, name_mentions(exact))
        chosen = {m.start for m in mentions if "horse" in m.readings}
        exact = [e for e in exact if e[0] in chosen]
        talk = Talk(tokens, list(tokens.words), mentions, self._roles_in(tokens.words, mentions))
        _mark_stops(talk, roster)
        _mark_feet(talk)
        complete_clipped(talk, finder.meaning)
        complete_headed(talk, finder.meaning)
        complete_told(talk, finder.meaning)
        complete_parts(talk, finder.meaning)
        complete_kinds(talk, finder.meaning)
        complete_little(talk)
        complete_beside(talk, finder.meaning)
        complete_same(talk, finder.meaning)
        strikes = _put_right(talk)
        taken_back = {m.start for m in mentions if m.dropped and "horse" in m.readings}
        exact = [e for e in exact if e[0] not in taken_back]
        leave_out_named_places(talk)
        point_out(talk)
        join_feet(talk)
        talk.fix_places()
        split_segments(talk)
        horses = HorseFinder(talk, roster, exact, self._common, heard=transcript.heard)
        horses.find_names()
        horses.assign()
        _draft(talk, horses.found, day)
        drop_not_every(talk)
        carry_out(talk, horses.found, strikes)
        draft_whose_number(talk, horses.found)
        _assert(talk)
        return talk, horses


def _assert(talk: Talk) -> None:
    """Give every draft its feet, place and degree, say of others what was said of one, and how each was asserted."""
    groups = attach_feet(talk)
    leave_the_one(talk)
    deal_in_order(talk)
    if talk.having("pads"):
        both_on_this_one(talk)
    draft_measures_then(talk)
    draft_again(talk, groups)
    attach_zones(talk, groups)
    attach_severity(talk, groups)
    mark_sought(talk, groups)
    copies = copy_statements(talk, groups)
    ask_contrary(talk)
    attach_same_places(talk)
    take_foot_of_one(talk)
    assert_all(talk, groups)
    inherit_status(copies)
    treat_what_is_there(talk)


def _mark_stops(talk: Talk, roster: Sequence[RosterHorse]) -> None:
    """Where one statement ends and the next begins."""
    take_noughts(talk)
    soften_stops(talk)
    mend_broken_off(talk)
    part_turns(talk)
    part_horses(talk, roster)
    name_white_line(talk)
    mark_named(talk)
    mark_seams(talk)
    join_headings(talk)


def _mark_feet(talk: Talk) -> None:
    """Feet that are told by more than their name: sides alone, counted feet, all but one."""
    complete_places(talk)
    leave_out_places(talk)
    mark_short_feet(talk)
    mark_bare_sides(talk)
    pair_behind(talk)
    mark_the_other(talk)
    mark_both_of_a_side(talk)
    mark_ends_of_a_side(talk)
    name_one_of_a_pair(talk)
    name_the_foot_of_the_end(talk)
    mark_one_of_several(talk)
    mark_counted_feet(talk)
    mark_exceptions(talk)
    mark_not_every(talk)
    mark_three_of_four(talk)
    mark_not_counted_out(talk)
    mark_full_sets(talk)


def _put_right(talk: Talk) -> list[Strike]:
    """Carry out on the mentions what was said wrongly at first; returns what is carried out on the drafts."""
    foot_said_before(talk)
    turn_round(talk)
    just_that_foot(talk)
    uncross(talk)
    join_cue_sentences(talk)
    complete_sides(talk)
    another_horses_number(talk)
    drop_another_horses(talk)
    without_animals(talk)
    called_before(talk)
    leave_out_told_by(talk)
    mark_others(talk)
    decide(talk)
    answer_own_question(talk)
    deny_own_question(talk)
    pads_under_heading(talk)
    set_foot_right(talk)
    take_up(talk)
    return [*found_on_another(talk), *repair(talk), *misnamed(talk)]


def _without_empty(visits: list[Visit]) -> list[Visit]:
    """A horse that is only mentioned ("this is Duchess, not Duke") was not visited; its words go to the notes."""
    told = [v for v in visits if v.facts] or [v for v in visits if v.horse][:1] or visits[:1]
    for visit in visits:
        if visit not in told:
            told[0].notes = "\n".join(n for n in (told[0].notes, visit.notes) if n)
            told[0].flags.extend(f for f in visit.flags if f.kind is not FlagKind.HORSE)
    return told


def _draft(talk: Talk, found: HorseTalk, day: date | None) -> None:
    draft_words(talk)
    draft_new(talk)
    draft_pronouns(talk)
    draft_vet(talk)
    draft_vet_wished(talk)
    draft_vet_answered(talk)
    draft_vet_addressed(talk)
    draft_pulled(talk)
    draft_off_by_the_horse(talk)
    draft_pulled_by_hand(talk)
    draft_off_it_came(talk)
    draft_renewed(talk)
    draft_shoe_off(talk)
    draft_cut_out(talk)
    draft_left_behind(talk)
    draft_thrown_there(talk)
    draft_coming_off(talk)
    draft_came_off(talk)
    draft_passive(talk)
    draft_came_without(talk)
    draft_gone(talk)
    draft_tips(talk)
    draft_short(talk)
    draft_white_line(talk)
    draft_responses(talk)
    draft_nailed(talk)
    draft_in_order(talk)
    MeasureReader(talk).read()
    draft_rotations(talk)
    draft_times(talk, {i for s in found.spans for i in range(s.start, s.end)})
    if day is not None:
        draft_dates(talk, day)
    deal_weeks(talk, found)
    deal_unnamed_weeks(talk, found)


def _deal(talk: Talk, horses: HorseFinder) -> dict[int, list[Draft]]:
    """The drafts of each horse, in the order said; a draft may be several horses'."""
    dealt: dict[int, list[Draft]] = {}
    if len(horses.found.horses) < _SEVERAL:
        return {0: [draft for segment in talk.segments for draft in segment.drafts]}
    for segment in talk.segments:
        shared = [max(index, 0) for index in horses.sharers(segment)] if segment.drafts else []
        for draft in segment.drafts:
            told = draft.horses or horses.sharing(segment, draft.slot) or shared
            for index in dict.fromkeys(told):
                dealt.setdefault(index, []).append(draft)
    return dealt


def _visit(
    transcript: Transcript, talk: Talk, horse: NamedHorse, day: date, rows: list[Settled], segments: list[Segment]
) -> Visit:
    told = {draft: _fact(transcript, talk, draft) for draft in dict.fromkeys(draft for _, draft in rows)}
    facts = [{"foot": foot, **told[draft]} for foot, draft in rows]
    parts = list(by_sentence(segments).values())
    flags = not_understood(transcript, talk, parts)
    notes = notes_of(transcript, talk, parts, told)
    decided = horse.place if horse.match is HorseMatch.KNOWN and not horse.namesakes else None
    return Visit.model_validate(  # the facts with it, which takes less time than one by one
        {
            "horse": horse.name,
            "horse_match": horse.match,
            "place": decided,
            "date": day,
            "facts": facts,
            "flags": flags,
            "notes": notes,
        }
    )


def _fact(transcript: Transcript, talk: Talk, draft: Draft) -> dict[str, object]:
    """What is kept of a draft, the same on each of its feet."""
    low, high = draft.start - _FAR, min(draft.start + _FAR, len(talk.words))
    near = [i for i in draft.evidence if low < i < high] or [draft.start]
    span = talk.tokens.span(min(min(near), draft.start), max(max(near) + 1, draft.end))
    words = transcript.words_of(*span) if transcript.words else []
    verified = words and any(word.heard is not None for word in words)
    return {
        "slot": draft.slot,
        "value": draft.kept_value(),
        "zone": draft.zone,
        "status": draft.status,
        "severity": draft.severity,
        "quote": transcript.text[span[0] : span[1]],
        "span": span,
        "start": words[0].start_s if words else None,
        "end": words[-1].end_s if words else None,
        "match": MatchKind.VERIFIED if verified else draft.match,
        "reasons": [],
        "rules": [*draft.rules, "foot: not said"] if draft.foot_guessed else draft.rules,
    }


def common_words(vocabulary: Vocabulary, classes: Iterable[str]) -> frozenset[str]:
    """Every word of these classes' phrases: of all of them, none is an unknown name at the head of a sentence."""
    forms = (form for name in classes for form in vocabulary.spoken(name))
    return frozenset(word for form in forms for word in form.split())
