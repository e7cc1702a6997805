"""What the adapter is learnt from: the open memos alone, in voices that no report has, each reading spoken once."""

from __future__ import annotations

import random
from collections import Counter
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from pipeline.errors import ClinchbookError
from pipeline.hearing.bias import MANNER, PROMPT_TOKENS
from pipeline.hearing.weights import weights_folder
from pipeline.vocabulary import load_vocabulary
from tests.bench.adapter import __main__ as bench
from tests.bench.adapter import windows
from tests.bench.adapter.disturbing import faster
from tests.bench.adapter.prompts import Prompts
from tests.bench.adapter.saying import joined, path_of, pieces, say, trimmed
from tests.bench.adapter.voices import HELD_VOICES, TURNED, Reading, every_voice, held_out, learnt_from, readings
from tests.bench.adapter.windows import GENERAL, GENERATED, MEMO, NAMES, Window
from tests.bench.hearing.conditions import read_wav, seconds_of
from tests.bench.hearing.noises import RATE
from tests.bench.hearing.takes import REPORT_VOICES
from tests.facts.scoring import load_gold

SAYING = """
import wave
PY = __import__("sys").executable
def say(text, voice, path, speed):
    with wave.open(path, "wb") as file:
        file.setparams((1, 2, 16000, 0, "NONE", ""))
        file.writeframes(b"\\x00\\x40" * 1600 * len(text.split()))
"""


def window(text: str = "Pip. Thrush in the left hind.", kind: str = MEMO) -> Window:
    return Window(kind, windows.sentences_of(text), ("Pip", "Otter", "Quince"))


def said_by(*voices: str, kind: str = MEMO) -> list[Reading]:
    """A window of its own in each of these voices."""
    return [Reading(window(f"Number {number}.", kind), voice, 1.0) for number, voice in enumerate(voices)]


def test_no_voice_of_the_report_is_ever_learnt_from() -> None:
    assert {"joe", "rms", "pico_gb", "af_bella", "af_nova"} == REPORT_VOICES
    assert not every_voice() & REPORT_VOICES
    drawn = {r.voice for r in readings([window(f"Number {number}.") for number in range(4000)])}
    alone = {part.split("*")[0] for voice in drawn for part in voice.split("+")}
    assert alone == every_voice()


def test_no_kept_memo_is_ever_read(monkeypatch: pytest.MonkeyPatch) -> None:
    read: list[str] = []

    def watched(path: Path) -> list[dict[str, Any]]:
        read.append(path.name)
        return load_gold(path)[:2]

    monkeypatch.setattr("tests.bench.adapter.windows.load_gold", watched)
    found = windows.all_windows(None, generated=2)
    assert {w.kind for w in found} == {MEMO, GENERATED}
    assert len(read) > 20
    assert [name for name in read if not name.startswith("open_")] == []


def test_only_files_of_open_memos_are_taken_from_a_folder(tmp_path: Path) -> None:
    (tmp_path / "open_a.jsonl").write_text('{"id": "a1", "text": "Pip.", "roster": ["Pip"]}\n', encoding="utf-8")
    (tmp_path / "kept_a.jsonl").write_text("not to be read", encoding="utf-8")
    assert [memo["id"] for memo in windows.open_memos(tmp_path)] == ["a1"]


def test_windows_are_whole_sentences_of_at_most_so_many_words() -> None:
    text = "One two. Three four? Five! Six seven eight nine ten eleven. Twelve."
    assert list(windows.cut(text, 5)) == [
        ("One two.", "Three four?", "Five!"),
        ("Six seven eight nine ten eleven.",),
        ("Twelve.",),
    ]


def test_a_name_is_swapped_in_the_text_and_on_the_roster_but_not_inside_words() -> None:
    text, roster = windows.with_other_names("Pip. Pippin and Pip's shoe.", ["Pip", "bo", "Io"], ["Otter"], "memo")
    assert text == "Otter. Pippin and Otter's shoe."
    assert roster[0] == "Otter"


def test_what_is_drawn_of_a_memo_does_not_hang_on_those_before_it() -> None:
    memos = [{"id": str(n), "text": f"Pip. Number {n}. " * 9, "roster": ["Pip", "Bosun"]} for n in range(6)]
    whole = list(windows.memo_windows(memos, ["Otter", "Fennel"]))
    later = list(windows.memo_windows(memos[3:], ["Otter", "Fennel"]))
    assert 3 <= len(later) < len(whole)
    assert whole[-len(later) :] == later
    assert len({w.roster for w in whole}) > 1


def test_names_that_are_added_to_the_corpus_change_few_of_those_that_were_drawn() -> None:
    memos = [{"id": str(n), "text": f"Pip. Number {n}.", "roster": ["Pip"]} for n in range(200)]
    names = [f"Name {letter}" for letter in "ABCDEFGHIJKLMNOPQRS"]
    before = list(windows.memo_windows(memos, names))
    after = list(windows.memo_windows(memos, [*names, "Otter"]))
    changed = [new for old, new in zip(before, after, strict=True) if old != new]
    assert 0 < len(changed) < 20  # a twentieth of two thirds of them
    assert {new.roster for new in changed} == {("Otter",)}


def test_general_talk_is_plain_sentences_without_their_source(tmp_path: Path) -> None:
    (tmp_path / "wisdom").write_text(
        "A tidy barn is\nno proof of a tidy mind.\n\t\t-- Somebody\n%\nToo short.\n%\n1. A list of {things} is none.\n",
        encoding="utf-8",
    )
    (found,) = windows.general_windows(tmp_path, [f"Name {n}" for n in range(9)], 5)
    assert (found.kind, found.text) == (GENERAL, "A tidy barn is no proof of a tidy mind.")
    assert len(set(found.roster)) == 8
    assert windows.general_windows(tmp_path / "none", ["Pip"], 5) == []


def test_held_voices_are_learnt_from_neither_alone_nor_in_a_blend() -> None:
    said = readings([window(f"Number {number}.") for number in range(4000)])
    learnt = learnt_from(said)
    assert not [r for r in learnt if any(voice in r.voice for voice in HELD_VOICES)]
    assert {name: len(found) for name, found in held_out(said).items() if name in ("kal16", "windows")} == {
        "kal16": 60,
        "windows": 60,
    }


def test_windows_held_out_are_learnt_in_no_other_voice_and_human_readings_count_twice() -> None:
    said = said_by(*["slt"] * 8, "espeak_gb", "af_sky")
    again = [Reading(said[0].window, "af_kore", 1.0)]
    held = held_out([*said, *again])
    assert held == {"windows": said[:2]}
    assert Counter(r.voice for r in learnt_from([*said, *again])) == {"slt": 6, "espeak_gb": 1, "af_sky": 2}


def test_of_general_talk_a_quarter_is_held_out_and_of_few_windows_none() -> None:
    general = said_by(*["slt"] * 9, kind=GENERAL)
    assert {name: len(found) for name, found in held_out([*general, *said_by("awb")]).items()} == {GENERAL: 2}


def test_of_memos_and_of_names_some_are_said_with_british_sounds_or_low() -> None:
    texts = [f"Number {number}." for number in range(2000)]
    said = readings([window(text, kind) for kind in (MEMO, NAMES, GENERAL) for text in texts])
    turned = [r for r in said if r.turned]
    of_kind = Counter(r.window.kind for r in turned)
    assert of_kind[MEMO] == pytest.approx(120, abs=40)
    assert of_kind[NAMES] == pytest.approx(100, abs=40)
    assert of_kind[GENERAL] == 0
    assert all(r.human for r in turned)
    assert {(r.british, r.depth < 1) for r in turned} == {(True, False), (True, True), (False, True)}
    held = held_out(said)
    assert {r.voice for r in held[TURNED]} == {"af_sarah"}
    assert not any(r.turned for r in held.get("af_sarah", []))
    assert not [r for r in learnt_from(said) if "af_sarah" in r.voice]


def test_the_name_of_a_file_changes_with_words_voice_and_speed() -> None:
    one = Reading(window(), "slt", 1.0)
    others = [
        *(Reading(window("Other."), "slt", 1.0), Reading(window(), "awb", 1.0), Reading(window(), "slt", 1.25)),
        *(Reading(window(), "slt", 1.0, british=True), Reading(window(), "slt", 1.0, depth=0.8)),
    ]
    assert len({one.key, *(other.key for other in others)}) == 6
    assert one.key == Reading(Window(GENERATED, window().sentences, ()), "slt", 1.0).key


def test_readings_are_spoken_in_pieces_joined_and_never_spoken_again(tmp_path: Path) -> None:
    (tmp_path / "say.py").write_text(SAYING, encoding="utf-8")
    reading = Reading(window("One two. Three. Four five six. Seven."), "slt", 1.0)
    parts = list(pieces(reading, tmp_path))
    assert " ".join(part.text for part in parts) == reading.window.text
    say([reading], tmp_path, tmp_path)
    assert [path.name for path in (tmp_path / "adapter").iterdir()] == [f"{reading.key}.wav"]
    spoken = 7 * 0.1  # a tenth of a second a word
    assert spoken + 0.05 * len(parts) < seconds_of(path_of(reading, tmp_path)) < spoken + 0.6 * len(parts)
    (tmp_path / "say.py").unlink()
    say([reading], tmp_path, tmp_path)


def test_a_british_reading_is_spoken_with_british_sounds_and_others_without(tmp_path: Path) -> None:
    (tmp_path / "hibari").mkdir()
    (tmp_path / "hibari" / "__init__.py").write_text("", encoding="utf-8")
    (tmp_path / "hibari" / "g2p.py").write_text("def G2P(british=False): return british\n", encoding="utf-8")
    (tmp_path / "say.py").write_text(SAYING.replace("* 1600", "* (3200 if g2p.G2P() else 1600)"), encoding="utf-8")
    with (tmp_path / "say.py").open("a", encoding="utf-8") as file:
        file.write("from hibari import g2p\n")
    for british in (False, True, False):
        reading = Reading(window(f"One two three four {british}."), "af_sky", 1.0, british=british)
        say([reading], tmp_path, tmp_path)
        spoken = 1.0 if british else 0.5
        assert spoken < seconds_of(path_of(reading, tmp_path)) < spoken + 0.6


def test_a_low_reading_is_spoken_faster_and_drawn_out(tmp_path: Path) -> None:
    low = Reading(window("One."), "af_sky", 1.0, depth=0.8)
    assert [part.speed for part in pieces(low, tmp_path)] == [1.25]
    tone = np.sin(2 * np.pi * 200 * np.arange(RATE) / RATE)
    assert faster(tone, 1.0) == pytest.approx(tone)
    slow = faster(tone, 0.8)
    assert len(slow) == pytest.approx(RATE / 0.8, abs=2)
    assert int(np.abs(np.fft.rfft(slow[:RATE])).argmax()) == 160  # hertz: a second of sound
    (tmp_path / "say.py").write_text(SAYING, encoding="utf-8")
    say([low], tmp_path, tmp_path)
    assert len(read_wav(path_of(low, tmp_path))) > 0.1 * RATE / 0.8


def test_without_voices_missing_sound_is_said(tmp_path: Path) -> None:
    reading = Reading(window(), "slt", 1.0)
    with pytest.raises(ClinchbookError, match=r"make it with --voices DIR, a folder whose say\.py offers"):
        say([reading], tmp_path, None)
    with pytest.raises(ClinchbookError, match=r"There is no say\.py in"):
        say([reading], tmp_path, tmp_path)
    assert not path_of(reading, tmp_path).exists()


def test_silent_ends_are_cut_and_pauses_put_behind() -> None:
    part = np.concatenate([np.zeros(RATE), np.full(RATE, 0.5), np.zeros(RATE)])
    assert len(trimmed(part)) == RATE // 20 + RATE + RATE // 10 - 1
    assert len(trimmed(np.zeros(RATE))) == 0
    whole = joined([part, part], random.Random(1))
    assert 2 * len(trimmed(part)) + 0.1 * RATE <= len(whole) <= 2 * len(trimmed(part)) + 1.2 * RATE
    assert float(np.abs(whole).max()) == pytest.approx(0.7)


@pytest.fixture(scope="module")
def prompts() -> Prompts:
    """Prompts as the installed weights count them."""
    return Prompts(Path(weights_folder()), load_vocabulary(), ["Bosun", "Tansy", "Juno"])


def test_prompts_are_those_of_hearing_or_none(prompts: Prompts) -> None:
    manner = prompts.encode(MANNER)
    drawn = [prompts.prompt(window(), random.Random(seed)) for seed in range(40)]
    assert sum(not prompt for prompt in drawn) in range(1, 10)
    for prompt in filter(None, drawn):
        assert prompt[-len(manner) :] == manner
        assert len(prompt) <= PROMPT_TOKENS


def test_rosters_are_longer_shorter_or_without_the_name_that_is_said(prompts: Prompts) -> None:
    drawn = [prompts.roster(window(), random.Random(seed)) for seed in range(60)]
    names = {"Pip", "Otter", "Quince", "Bosun", "Tansy", "Juno"}
    assert all(set(roster) <= names and len(set(roster)) == len(roster) for roster in drawn)
    assert {len(roster) for roster in drawn} == {1, 2, 3, 4, 5, 6}
    assert 0 < sum("Pip" not in roster for roster in drawn) < 30


def test_before_the_words_stand_the_prompt_and_the_marks(prompts: Prompts) -> None:
    assert prompts.head([]) == [50258, 50259, 50359, 50363]
    assert prompts.head([7, 8]) == [50361, 7, 8, 50258, 50259, 50359, 50363]
    assert prompts.end == 50257


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        (["--steps", "0"], "'0' is no whole number above 0"),
        (["--steps", "many"], "'many' is no whole number above 0"),
        (["--device", "tpu"], "invalid choice"),
    ],
)
def test_what_cannot_be_asked_is_said(given: list[str], sentence: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit):
        bench.main(given)
    assert sentence in capsys.readouterr().err


def test_a_place_that_cannot_be_written_is_said_before_anything_is_spoken(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert bench.main(["--sound", str(tmp_path), "--out", str(tmp_path)]) == 1
    assert capsys.readouterr().err == f"The adapter cannot be written to {tmp_path}: is a directory.\n"


def test_what_is_missing_to_learn_from_is_said(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert bench.main(["--sound", str(tmp_path), "--limit", "1", "--say-only"]) == 1
    *left_out, last = capsys.readouterr().err.splitlines()
    assert set(left_out) == {bench.NO_WORDS, bench.NO_QUOTES, bench.NO_REAL}
    assert last.startswith(f"There is no sound for the bench in {tmp_path / 'adapter'}: make it with --voices DIR")


def test_learning_without_torch_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    def missing(name: str) -> None:
        raise ModuleNotFoundError(f"No module named {name!r}", name="torch")

    monkeypatch.setattr(bench, "import_module", missing)
    with pytest.raises(ClinchbookError, match=r"^Learning needs torch \(2\.11 on a graphics card"):
        bench.torch_parts(None)


def test_a_row_tells_the_losses_of_a_set_beside_those_of_the_bare_weights() -> None:
    told = ["cpu", "2.5.1", 9, "0.02", 6, 2, 16, 20, 0.85, 60]
    held = {"kal16": said_by("kal16", "kal16")}
    (row,) = bench.table(told, held, {"kal16": (0.5, 1.00004)}, {"kal16": (0.25, 0.4)})
    assert dict(zip(bench.COLUMNS, row, strict=True)) == {
        **dict(zip(bench.COLUMNS, told, strict=False)),
        **{"set": "kal16", "held": 2},
        **{"bare_clean": "0.5000", "bare_disturbed": "1.0000", "clean": "0.2500", "disturbed": "0.4000"},
    }
