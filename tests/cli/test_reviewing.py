"""``clinchbook review``: listed without a keyboard, asked by single keys with one, and harmless whatever was said."""

from __future__ import annotations

import hashlib
import json
import os
import re
import select
import subprocess
import sys
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.cli.playing import Player
from pipeline.cli.review_keys import KeyReview, Terminal
from pipeline.keeping import Store
from pipeline.record import Fact, Flag, FlagKind, HorseMatch, Memo, MemoRecord, RosterHorse, Transcript, Visit, Word
from pipeline.using.review import Review
from pipeline.using.review.surroundings import Clip
from pipeline.vocabulary import load_vocabulary

if TYPE_CHECKING:
    from tests.cli.conftest import MakeMemo, Run

SAID = "Bramble. Size three in front."
HOSTILE = (
    "\x1b[2J\x1b[31mred",
    "\x1b]0;title\x07",
    "\u202egnilrac",
    "<script>alert(1)</script>",
    "'; DROP TABLE facts; --",
    "[bold]loud[/bold]",
    "=cmd|' /C calc'!A1",
    "a\rb\x00c\x08d",
)


Keep = Callable[..., None]


@pytest.fixture
def keep(make_memo: MakeMemo, own_surroundings: Path) -> Keep:
    """Keep one memo of a horse: a size that is in doubt, and a stretch of unclear words."""

    def keeping(name: str = "Bramble", text: str = SAID, seed: int = 0) -> None:
        path = make_memo(f"memo{seed}.wav", seed=seed)
        start = text.index("Size three") if "Size three" in text else 0
        fact = Fact(
            foot="LF", slot="shoe_size", value="3", confidence=0.5, flagged=True, reasons=[f"Heard “{name}”?"],
            quote=text[start : start + 10], span=(start, start + 10), start=0.02, end=0.06,
        )  # fmt: skip
        flag = Flag(kind=FlagKind.UNCLEAR_SPEECH, reason=name, quote=text[:4], span=(0, 4), start=0.0, end=0.02)
        words = [Word(text=text, start=0, end=len(text), start_s=0, end_s=0.1, probability=0.5)]
        visit = Visit(horse=name, horse_match=HorseMatch.KNOWN, date=date(2026, 3, 2), facts=[fact])
        memo = Memo(path=str(path), sha256=hashlib.sha256(path.read_bytes()).hexdigest(), seconds=0.1)
        with Store.open(own_surroundings) as store:
            store.add_horses([RosterHorse(name=name)])
            record = MemoRecord(memo=memo, transcript=text, visits=[visit], flags=[flag])
            store.keep(record, Transcript(text=text, words=words), path)

    return keeping


def pressing(folder: Path, keys: str, lines: tuple[str, ...] = ()) -> str:
    """What the terminal tells while these keys are pressed and these lines typed; then q."""
    waiting, typed, told = list(keys), list(lines), list[str]()
    terminal = Terminal(lambda: waiting.pop(0) if waiting else "q", lambda asked: typed.pop(0), told.append)
    with Store.open(folder) as store, Player() as player:
        KeyReview(Review(store, load_vocabulary(), "Reviewer"), terminal, player).run()
    return "\n".join(told)


def test_without_a_store(run: Run) -> None:
    ended = run("review")
    assert ended.code != 0
    assert ended.err.count("\n") == 1


def test_nothing_doubtful(run: Run) -> None:
    assert run("roster", "add", "Bramble").code == 0
    ended = run("review", "--no-input")
    assert (ended.code, ended.out, ended.err) == (0, "", "Nothing is doubtful. All done.\n")


def test_the_questions_are_listed_without_a_keyboard(run: Run, keep: Keep) -> None:
    keep()
    for arguments in (("review",), ("review", "--no-input")):
        ended = run(*arguments)
        assert (ended.code, ended.err) == (0, "2 questions to answer.\n")
        assert "visit 1 Bramble: left fore: shoe size 3. Heard “Bramble”? at 0:00" in ended.out
        assert max(map(len, ended.out.splitlines())) <= 80


def test_the_questions_as_json(run: Run, keep: Keep) -> None:
    keep()
    told = [json.loads(line) for line in run("review", "--json").out.splitlines()]
    asked = next(question for question in told if question["kind"] == "field")
    assert asked["words"] == {"before": "Bramble. ", "marked": "Size three", "behind": " in front."}
    assert asked["clip"] == {"memo": 1, "start": 0.0, "end": 0.1}
    assert asked["answers"][:2] == ["left fore: shoe size 2.5", "left fore: shoe size 3.5"]
    assert (asked["key"], asked["visit"], asked["horse"], asked["last_time"]) == ("v1-f1", 1, "Bramble", None)


def test_keys_answer_and_take_back(keep: Keep, own_surroundings: Path) -> None:
    keep()
    told = pressing(own_surroundings, "aauq")
    assert "1 of 2 Bramble, 2026-03-02" in told
    assert "2 of 2 Bramble, 2026-03-02" in told
    assert "Taken back at Bramble; it is asked again." in told
    assert told.endswith("1 left for another time. 1 answered, and kept.")


def test_a_value_is_typed(keep: Keep, own_surroundings: Path) -> None:
    keep()
    told = pressing(own_surroundings, "scca", ("no size at all", "double aught"))
    assert "“no size at all” is no shoe size" in told
    assert "Corrected: left fore: shoe size 00." in told
    with Store.open(own_surroundings) as store:
        assert store.visit(1).facts[0].fact.value == "00"


def test_a_foot_takes_two_keys(keep: Keep, own_surroundings: Path) -> None:
    keep()
    assert "Corrected: right hind: shoe size 3." in pressing(own_surroundings, "sf4")


def test_a_key_that_says_nothing_changes_nothing(keep: Keep, own_surroundings: Path) -> None:
    keep()
    told = pressing(own_surroundings, "xz9o")
    assert told.count("This key says nothing here.") == 4
    with Store.open(own_surroundings) as store:
        assert store.changes(1) == []


def test_what_is_skipped_is_asked_next_time(keep: Keep, own_surroundings: Path) -> None:
    keep()
    told = pressing(own_surroundings, "ss")
    assert "2 skipped; they are asked again next time." in told
    assert "1 of 2 Bramble" in pressing(own_surroundings, "")


@pytest.mark.parametrize("key", ["q", "\x03", "\x04", ""])
def test_stopping_keeps_what_was_said(keep: Keep, own_surroundings: Path, key: str) -> None:
    keep()
    waiting = ["a", key]
    told: list[str] = []
    with Store.open(own_surroundings) as store, Player() as player:
        terminal = Terminal(lambda: waiting.pop(0), lambda asked: "", told.append)
        KeyReview(Review(store, load_vocabulary(), "Reviewer"), terminal, player).run()
    assert told[-1].endswith("1 left for another time. 1 answered, and kept.")


def test_without_a_player_it_says_where_the_sound_lies(
    keep: Keep, own_surroundings: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keep()
    monkeypatch.setattr("shutil.which", lambda name: None)
    told = pressing(own_surroundings, "p")
    lies = re.search(r"No player was found; the 0.1 seconds lie in (\S+\.wav) until the review ends\.", told)
    assert lies is not None
    assert not Path(lies.group(1)).exists()  # the review has ended


def test_a_player_gets_a_clip_of_his_own(
    keep: Keep, own_surroundings: Path, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    keep()
    script = tmp_path / "aplay"
    script.write_text(f'#!/bin/sh\nls -l "$2" > {tmp_path}/seen\n')
    script.chmod(0o700)
    monkeypatch.setenv("PATH", f"{tmp_path}:/usr/bin:/bin")
    with Store.open(own_surroundings) as store, Player() as player:
        said = player.play(store.visit(1), Clip(1, 0.0, 0.1))
        assert player._playing is not None
        player._playing.wait(timeout=20)
    assert said.startswith("Playing 0.1 seconds; they lie in ")
    assert (tmp_path / "seen").read_text().startswith("-rw------- ")


def test_an_original_that_is_gone_is_said(keep: Keep, own_surroundings: Path) -> None:
    keep()
    for original in (own_surroundings / "originals").rglob("*.wav"):
        original.unlink()
    assert "There is no file" in pressing(own_surroundings, "p")


@pytest.mark.parametrize("evil", HOSTILE)
def test_hostile_names_and_words_reach_the_screen_as_text_alone(
    keep: Keep, own_surroundings: Path, run: Run, evil: str
) -> None:
    keep(evil, f"{evil} Size three {evil}")
    shown = pressing(own_surroundings, "aa") + run("review", "--no-input").out
    assert re.findall(r"[\x00-\x09\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]", shown) == []


@pytest.mark.skipif(not hasattr(os, "openpty"), reason="this system has no terminals of this kind")
@pytest.mark.parametrize("last", ["q", "\x04"])
def test_a_real_terminal(keep: Keep, own_surroundings: Path, last: str) -> None:
    keep()
    ours, theirs = os.openpty()
    with subprocess.Popen(
        [sys.executable, "-m", "pipeline.cli", "review", "--store", str(own_surroundings)], stdin=theirs, stdout=theirs
    ) as running:
        shown = seen_until(ours, "q stop")
        press(ours, theirs, "a")
        shown += seen_until(ours, "2 of 2")
        seen_until(ours, "q stop")
        press(ours, theirs, last)
        shown += seen_until(ours, "and kept.")
        assert running.wait(timeout=30) == 0
    os.close(theirs)
    os.close(ours)
    assert "1 of 2 Bramble, 2026-03-02" in shown
    assert shown.endswith("1 left for another time. 1 answered, and kept.")


@pytest.mark.skipif(not hasattr(os, "openpty"), reason="this system has no terminals of this kind")
def test_ctrl_c_while_typing_changes_nothing_and_asks_on(keep: Keep, own_surroundings: Path) -> None:
    keep()
    ours, theirs = os.openpty()
    with subprocess.Popen(
        [sys.executable, "-m", "pipeline.cli", "review", "--store", str(own_surroundings)],
        preexec_fn=lambda: os.login_tty(theirs),  # so that the key reaches it as a signal
    ) as running:
        seen_until(ours, "q stop")
        press(ours, theirs, "m")
        seen_until(ours, "What was said, with its foot")
        os.write(ours, b"left fo\x03")
        seen_until(ours, "Nothing was typed; nothing is changed.")
        press(ours, theirs, "Q")
        seen_until(ours, "2 left for another time. None answered.")
        assert running.wait(timeout=30) == 0
    os.close(theirs)
    os.close(ours)


def press(ours: int, theirs: int, key: str) -> None:
    """Press a key once the program waits for one: what is typed before that is thrown away, not taken for an answer."""
    import termios

    while termios.tcgetattr(theirs)[3] & termios.ICANON:
        os.sched_yield()
    os.write(ours, key.encode())


def seen_until(terminal: int, end: str) -> str:
    """What a terminal shows up to and with these words; a minute without a sign is a failure, not a wait."""
    shown = ""
    while end not in shown:
        assert select.select([terminal], [], [], 60)[0], f"waited for {end!r} in vain; shown was:\n{shown}"
        shown += os.read(terminal, 1).decode("utf-8", "replace")
    return shown


def test_learned_words_are_listed_and_forgotten(run: Run, keep: Keep, own_surroundings: Path) -> None:
    from pipeline.keeping.lessons import WordLesson
    from pipeline.using.review.learning import NameLesson, learn

    keep()
    with Store.open(own_surroundings) as store:
        learn(store, WordLesson("findings", "thrush", "thruss"))
        learn(store, NameLesson(store.horse("Bramble"), "Brambull"))
    listed = run("words", "list").out
    assert listed == "findings  thrush  “thruss” as heard\nhorse  Bramble  “Brambull” as heard\n"
    told = [json.loads(line) for line in run("words", "list", "--json").out.splitlines()]
    assert told[1] == {"class": "horse", "canonical": "Bramble", "form": "Brambull", "heard": True}
    assert run("words", "forget", "thruss").out == "“thruss” is no longer read as thrush.\n"
    assert run("words", "forget", "brambull").out == "Bramble is no longer called “Brambull”.\n"
    assert run("words", "list").out == ""


def test_check_tells_the_silent_errors(run: Run, keep: Keep) -> None:
    keep()
    told = [json.loads(line) for line in run("check", "--json").out.splitlines()]
    assert {"what": "review", "right": True, "look": False, "found": "no spot check yet; the review asks some"} in told
