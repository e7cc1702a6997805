"""Many ways of saying that something is not there, was there once, or is only feared: none may be read as found today.

The forms are common practice of the trade's speech, no source; published denials are tried in the bench of negation.
"""

from __future__ import annotations

import pytest

from pipeline.record import Fact
from tests.reading.conftest import Read

FINDINGS = {"thrush": "thrush", "seedy toe": "white_line_disease", "bruising": "bruise"}

DENIED = """\
no {f} in the left hind
no sign of {f} in the left hind
no signs of any {f} in the left hind
no {f} or heat in the left hind
no heat or {f} in the left hind
no heat, no {f} in the left hind
no heat or swelling or {f} in the left hind
no heat, swelling or {f} in the left hind
not a trace of {f} in the left hind
not a bit of {f} in the left hind
not any {f} in the left hind
never saw any {f} in the left hind
never found {f} in the left hind
didn't find any {f} in the left hind
did not see {f} in the left hind
couldn't find any {f} in the left hind
can't see any {f} in the left hind
don't see {f} in the left hind
there's no {f} in the left hind
there isn't any {f} in the left hind
there is no {f} in the left hind
there wasn't any {f} in the left hind
there was no {f} in the left hind
left hind no {f}
left hind, no {f}
left hind has no {f}
left hind hasn't any {f}
left hind hasn't got {f}
left hind doesn't have {f}
left hind doesn't have any {f}
left hind didn't have any {f}
left hind had no {f} today
left hind {f} none
left hind, {f}, none
left hind {f} nil
left hind, {f} no
left hind {f} negative
left hind negative for {f}
left hind free of {f}
left hind is free from {f}
left hind clear of {f}
left hind is clean, no {f}
left hind without any {f}
left hind without {f}
left hind shows no {f}
left hind shows no sign of {f}
left hind showed no evidence of {f}
no evidence of {f} left hind
absence of {f} in the left hind
nothing like {f} in the left hind
nothing in the way of {f} in the left hind
neither heat nor {f} in the left hind
{f} in the left hind? no
{f} in the left hind, none
checked for {f} in the left hind, none
checked the left hind for {f} and found none
checked the left hind for {f} and there wasn't any
looked for {f} in the left hind, nothing
looked for {f} in the left hind and didn't find any
I looked hard for {f} in the left hind but no
the left hind isn't showing {f}
ain't no {f} in the left hind
there ain't any {f} in the left hind
nae {f} in the left hind
zero {f} in the left hind
I don't think there's any {f} in the left hind
I can't find any {f} in the left hind
I couldn't see a bit of {f} in the left hind
not seeing any {f} in the left hind
wasn't any {f} in the left hind
haven't got any {f} in the left hind
hardly could call it, no {f} in the left hind
no real {f} in the left hind
no obvious {f} in the left hind
no active {f} in the left hind
no visible {f} in the left hind
left hind, no {f} that I can see
left hind, no {f} to speak of
left hind, not {f}
left hind, it's not {f}
that's not {f} in the left hind
it isn't {f} in the left hind
ruled out {f} in the left hind
vet ruled out {f} in the left hind
{f} was ruled out in the left hind
no {f} anywhere on the left hind
no {f}, no heat, no pulse in the left hind
the owner thought {f} in the left hind but there's none
no {f} here on the left hind, thank god
left hind is good, no {f} whatsoever
left hind, no {f} at all
there's none of that {f} in the left hind
no left hind {f}
not one bit of {f} in the left hind
left hind isn't carrying any {f}
never a sign of {f} in the left hind
no hint of {f} in the left hind
no {f} on the left hind or the right hind
no {f} left hind or right hind
no {f} in either hind
no {f} in any of them
no {f} behind
neither hind has {f}
none of them have {f}
none of the feet had any {f}
neither of the hinds had {f}
nothing on the left hind, no {f}, no heat
left hind not got {f}
left hind hasn't {f}
left hind's got no {f}
left hind there's nothing, no {f}
{f} not present in the left hind
{f} absent in the left hind
{f} is absent on the left hind
{f} not there in the left hind
{f} not found left hind
no {f} noted left hind
{f} wasn't present in the left hind
"""

EARLIER = """\
last time the left hind had {f}
last visit there was {f} in the left hind
the left hind had {f} last time
left hind had {f} last time
left hind had {f} last visit
left hind had {f} in the spring
left hind had {f} six weeks ago
left hind had {f} a month back
left hind had {f} back in March
left hind had {f} last year
left hind had {f} last winter
left hind used to have {f}
left hind has had {f} in the past
left hind has a history of {f}
history of {f} in the left hind
previous {f} in the left hind
old {f} in the left hind, gone now
there used to be {f} in the left hind
in the autumn he had {f} in the left hind
before Christmas he had {f} in the left hind
when I was here last he had {f} in the left hind
first time I saw him he had {f} in the left hind
the previous farrier found {f} in the left hind
he'd had {f} in the left hind before I came
left hind had {f} earlier in the year
left hind had {f} as a foal
years ago he had {f} in the left hind
two visits back he had {f} in the left hind
left hind was treated for {f} in May
the {f} he had in the left hind last time
since the {f} in the left hind last time he's been fine
{f} last time in the left hind
{f} in the left hind last time, none today
that {f} in the left hind has cleared up
the {f} in the left hind is gone
the {f} in the left hind has grown out
the {f} in the left hind has healed
left hind {f} has resolved
left hind's {f} is all cleared up
left hind {f} from last time is gone
"""

NOT_HERE = """\
if he gets {f} in the left hind call me
if there's {f} in the left hind next time we'll treat it
watch for {f} in the left hind
keep an eye out for {f} in the left hind
owner to watch the left hind for {f}
if {f} shows up in the left hind ring me
next time I'll check the left hind for {f}
want to check the left hind for {f} next time
in case he gets {f} in the left hind
to prevent {f} in the left hind
I told her to look out for {f} in the left hind
could get {f} in the left hind if the mud stays
he'll get {f} in the left hind if she doesn't clean it
so he doesn't get {f} in the left hind
otherwise he'll have {f} in the left hind by spring
unless he gets {f} in the left hind
the other horse has {f} in the left hind
my own mare has {f} in her left hind
the neighbour's pony had {f} in the left hind
his stablemate has {f} in the left hind
"""

NOT_ON = """\
next time I'll put {s} on the fronts
next time it's {s} on the fronts
next time {s} on the fronts
next visit we go to {s} on the fronts
I'll put {s} on the fronts next time
I'd like {s} on the fronts next time
might try {s} on the fronts next time
thinking about {s} on the fronts
thinking of going to {s} on the fronts
we'll go to {s} on the fronts if he's still sore
if he's still sore we'll go to {s} on the fronts
if he's no better it'll be {s} on the fronts
if that doesn't hold it's {s} on the fronts
should he get worse {s} on the fronts
come spring I want {s} on the fronts
come the spring it's {s} on the fronts
by the summer he'll need {s} on the fronts
he'll want {s} on the fronts before long
he needs {s} on the fronts next time
he's going into {s} on the fronts next time
we agreed on {s} on the fronts for next time
plan is {s} on the fronts
the plan for next time is {s} on the fronts
told her he'll be in {s} on the fronts next time
told her to expect {s} on the fronts next time
owner wants {s} on the fronts
she wants {s} on the fronts next time
vet wants {s} on the fronts
vet suggested {s} on the fronts
the vet would like {s} on the fronts
I'd go to {s} on the fronts
I would put {s} on the fronts
could go to {s} on the fronts down the line
maybe {s} on the fronts next time
possibly {s} on the fronts next time
remind me to put {s} on the fronts next time
note for next time, {s} on the fronts
when he comes back in work {s} on the fronts
once the ground dries he gets {s} on the fronts
once he's sound he gets {s} on the fronts
as soon as it heals {s} on the fronts
after the show he's getting {s} on the fronts
down the road {s} on the fronts
eventually {s} on the fronts
he'll get {s} on the fronts in the autumn
I'm going to put {s} on the fronts on Tuesday
coming back Tuesday to put {s} on the fronts
ordered {s} for the fronts
I've ordered {s} for the fronts
we talked about {s} on the fronts
we discussed {s} on the fronts
she asked about {s} on the fronts
she was asking about {s} on the fronts
they've been asking about {s} on the fronts
wouldn't put {s} on the fronts yet
not ready for {s} on the fronts
I'd hold off on {s} on the fronts
decided against {s} on the fronts
didn't put {s} on the fronts
no {s} on the fronts this time
I was going to put {s} on the fronts but left it
was going to use {s} on the fronts
had thought about {s} on the fronts
he used to wear {s} on the fronts
he was in {s} on the fronts last time
took the {s} off the fronts
pulled the {s} off the fronts
"""
SET_UPS = {"egg bars": "egg_bar", "full pads": "full", "wedges": "wedge"}


def forms(text: str) -> list[tuple[str, str]]:
    return [(form, finding) for form in text.splitlines() for finding in FINDINGS]


def found(read: Read, form: str, finding: str) -> list[Fact]:
    said = form.format(f=finding)
    (visit,) = read(f"Tally. {said[0].upper()}{said[1:]}. Size one.", "Tally")
    return [fact for fact in visit.facts if fact.slot == "finding" and fact.value == FINDINGS[finding]]


@pytest.mark.parametrize(("form", "finding"), forms(DENIED))
def test_what_is_denied_is_absent(read: Read, form: str, finding: str) -> None:
    facts = found(read, form, finding)
    assert facts
    assert {fact.status.value for fact in facts} == {"absent"}


@pytest.mark.parametrize(("form", "finding"), forms(EARLIER))
def test_what_was_there_once_is_not_of_today(read: Read, form: str, finding: str) -> None:
    assert {fact.status.value for fact in found(read, form, finding)} <= {"history", "resolved", "absent"}


@pytest.mark.parametrize(("form", "finding"), forms(NOT_HERE))
def test_what_is_feared_or_another_horses_is_not_found(read: Read, form: str, finding: str) -> None:
    assert {fact.status.value for fact in found(read, form, finding)} <= {"planned", "absent", "resolved"}


@pytest.mark.parametrize("set_up", SET_UPS)
@pytest.mark.parametrize("form", NOT_ON.splitlines())
def test_what_is_planned_discussed_or_taken_off_is_not_on_the_foot(read: Read, form: str, set_up: str) -> None:
    said = form.format(s=set_up)
    (visit,) = read(f"Tally. Trimmed the hinds. {said[0].upper()}{said[1:]}.", "Tally")
    facts = [fact for fact in visit.facts if fact.value == SET_UPS[set_up]]
    assert {fact.status.value for fact in facts} <= {"planned", "history", "absent"}


@pytest.mark.parametrize(
    ("said", "status"),
    [
        ("He's no longer lame", "resolved"),
        ("He's no longer lame on the left front", "resolved"),
        ("He no longer forges", "resolved"),
        ("He's not lame", "absent"),
        ("Not a bit lame", "absent"),
        ("He doesn't forge", "absent"),
    ],
)
def test_a_gait_that_is_denied_or_gone_is_not_of_today(read: Read, said: str, status: str) -> None:
    (visit,) = read(f"Tally. {said}.", "Tally")
    assert [fact.status.value for fact in visit.facts if fact.slot == "gait"] == [status]


def test_what_has_not_moved_since_is_still_there(read: Read) -> None:
    (visit,) = read("Tally. Quarter crack in the right front, mild, and it hasn't moved since I last saw it.", "Tally")
    assert [fact.status.value for fact in visit.facts] == ["present"]
    (visit,) = read("Tally. He had thrush in the left hind at Easter and hasn't had it since.", "Tally")
    assert [fact.status.value for fact in visit.facts] == ["resolved"]
