"""The hearing bench measures what it says: words levelled, mistakes counted, noise at its ratio and its seed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from pathlib import Path

import jiwer
import numpy as np
import pytest

from pipeline.errors import ClinchbookError, WeightsError
from pipeline.hearing.recognise import Heard
from pipeline.hearing.settings import HearingSettings
from pipeline.ingest import load_reader
from pipeline.record import Fact, Foot, HorseMatch, Memo, Transcript, Visit
from pipeline.vocabulary import load_vocabulary
from tests.bench.hearing import archive, long
from tests.bench.hearing.conditions import at_ratio, disturb, read_wav, speech_power, write_wav
from tests.bench.hearing.figures import Figures, WordCounts, mistakes
from tests.bench.hearing.filling import fill
from tests.bench.hearing.making import make, path_of, write_list
from tests.bench.hearing.noise_memos import noise_rows
from tests.bench.hearing.noises import RATE, noise
from tests.bench.hearing.recognising import OURS, UNBIASED, Device, Hearing, Listener, OwnEar, ears, memo_of
from tests.bench.hearing.running import Bench
from tests.bench.hearing.takes import CONDITIONS, report_takes, tune_takes
from tests.bench.hearing.terms import names_in, trade_terms
from tests.bench.hearing.words import plain

TERMS = trade_terms(load_vocabulary())


@pytest.mark.parametrize(
    ("written", "words"),
    [
        ('Toe 3½" at 52°.', "toe three and a half inches at fifty two degrees"),
        ("toe 3 1/2 inches", "toe three and a half inches"),
        ("3.5 in", "three and a half in"),
        ("5/8", "five eighths"),
        ("Size 00, #5 slim", "size double aught number five slim"),
        ("double nought", "double aught"),
        ("92mm", "ninety two millimeters"),
        ("92 millimetres", "ninety two millimeters"),
        ("the 3rd", "the third"),
        ("copper sulphate", "copper sulfate"),
        ("he’s OK", "he's okay"),
        ("ought", "ought"),
    ],
)
def test_words_are_levelled(written: str, words: str) -> None:
    assert " ".join(plain(written)) == words


def test_a_stretch_counts_its_longer_side() -> None:
    said, heard = ["six", "nails", "in", "each", "front"], ["snails", "in", "each", "of", "front"]
    found = [(" ".join(one), " ".join(other)) for _, _, one, other in mistakes(said, heard)]
    assert found == [("six nails", "snails"), ("", "of")]
    counts = WordCounts()
    counts.count("six nails in each front", "snails in each of front", TERMS, [])
    assert (counts.words, counts.wrong) == (5, 3)
    assert counts.confusions == {("six nails", "snails"): 1}


def test_a_compound_written_apart_is_no_mistake() -> None:
    assert not list(mistakes(["no", "sidebone", "a", "side"], ["no", "side", "bone", "aside"]))


def test_trade_words_terms_and_names_are_counted() -> None:
    counts = WordCounts()
    counts.count(
        "Pip. Thrush in the left hind, he was good", "Pep. Fresh in the left hind, he was corn", TERMS, ["Pip"]
    )
    assert (counts.trade_words, counts.trade_wrong) == (3, 1)
    assert (counts.terms, counts.terms_heard, counts.terms_made_up) == (2, 1, 1)
    assert (counts.names, counts.names_heard) == (1, 0)


def test_the_longest_term_wins_and_no_word_counts_twice() -> None:
    found = TERMS.in_text(plain("white line disease at the toe"))
    assert found == {("white", "line", "disease"): 1, ("toe",): 1}
    assert names_in(plain("Nova Jean and Nova"), ["Nova", "Nova Jean"]) == {("nova", "jean"): 1, ("nova",): 1}
    assert names_in(plain("Nova's sound, that's Nan's"), ["Nova", "Nan"]) == {("nova",): 1, ("nan",): 1}


def test_nothing_heard_is_all_wrong() -> None:
    counts = WordCounts()
    counts.count("mild thrush", "", TERMS, [])
    assert counts.wer == 1.0


def test_facts_wrong_without_a_flag_are_told_apart() -> None:
    said: list[tuple[Foot, str, bool]] = [
        ("LF", "thrush", False),
        ("RF", "corn", False),
        ("LH", "corn", True),
        ("RH", "corn", True),
    ]
    facts = [Fact(foot=foot, slot="finding", value=value, flagged=flagged) for foot, value, flagged in said]
    gold = {"text": "x", "visits": [{"horse": None, "facts": [["LF", "finding", "thrush", "present", None, None]]}]}
    figures = Figures()
    heard = Hearing(ear="ours", memo=Memo(seconds=10), transcript=Transcript(text="x"), flags=[], work_s=1)
    visit = Visit(horse=None, horse_match=HorseMatch.UNCLEAR, date=date(2026, 3, 2), facts=facts)
    figures.add(gold, heard, [visit], TERMS)
    assert figures.row() == ["1", "0.000", "", "", "", "", "0.400", "1/1", "0.500", "0.250", "0.10"]


def test_tune_and_report_share_neither_voice_nor_memo() -> None:
    tune, report = tune_takes(), report_takes()
    assert len(tune) == 80
    assert len([take for take in report if take.condition == "clean"]) == 48
    assert [len([t for t in report if t.condition == name]) for name in CONDITIONS[1:]] == [12] * 12
    assert not {take.voice for take in tune} & {take.voice for take in report}
    assert not {take.memo["text"] for take in tune} & {take.memo["text"] for take in report}
    assert len({take.stem for take in [*tune, *report]}) == 80 + 48 + 144


@pytest.mark.parametrize("name", ["wind", "hammer", "diesel"])
def test_noise_is_the_same_for_the_same_seed_alone(name: str) -> None:
    first = noise(name, 2, seed=1)
    assert len(first) == 2 * RATE
    assert np.array_equal(first, noise(name, 2, seed=1))
    assert not np.array_equal(first, noise(name, 2, seed=2))
    assert np.sqrt(np.mean(first**2)) == pytest.approx(0.1)


def test_noise_lies_at_its_ratio_to_the_speech_alone() -> None:
    speech = np.concatenate([np.zeros(RATE), 0.1 * np.sin(np.arange(RATE)), np.zeros(RATE)])
    disturbance = noise("wind", 3, seed=1)
    added = at_ratio(speech, disturbance, 5.0) - speech
    assert 10 * np.log10(speech_power(speech) / np.mean(added**2)) == pytest.approx(5.0, abs=0.01)
    assert speech_power(speech) == pytest.approx(0.005, rel=0.01)


@pytest.mark.parametrize(("condition", "rate", "highest_hz"), [("telephone", 8000, 3400), ("amr", 16000, 4000)])
def test_a_telephone_loses_what_is_high(condition: str, rate: int, highest_hz: int, tmp_path: Path) -> None:
    hiss = 0.1 * np.random.default_rng(3).standard_normal(RATE)
    sound, got = disturb(hiss, condition, "memo", [])
    write_wav(tmp_path / "x.wav", sound, got)
    spectrum = np.abs(np.fft.rfft(read_wav(tmp_path / "x.wav"))) ** 2
    hz = np.fft.rfftfreq(len(sound), 1 / got)
    assert got == rate
    assert spectrum[hz > highest_hz + 100].sum() < 0.02 * spectrum.sum()


def test_missing_sound_says_how_to_get_voices(tmp_path: Path) -> None:
    with pytest.raises(ClinchbookError, match=r"make it with --voices DIR, a folder whose say\.py offers"):
        make(tune_takes()[:1], tmp_path, None)


def test_an_archive_that_is_not_there_or_cannot_be_made_is_said(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert archive.main([str(tmp_path)]) == 1
    assert capsys.readouterr().err == (f"There is no archive in {tmp_path}: make it with --make 500 --voices DIR.\n")
    assert archive.main([str(tmp_path), "--make", "1"]) == 1
    assert capsys.readouterr().err.startswith(f"There is no sound for the bench in {tmp_path}: make it with --voices")


def test_a_long_memo_is_filled_from_the_first_files_or_says_what_lacks(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    files = [tmp_path / f"{number:04}.ogg" for number in range(3)]
    monkeypatch.setattr(long, "seconds_of", lambda path: 20.0)
    assert list(long.fitting(files, 42)) == files[:2]
    with pytest.raises(ClinchbookError, match=r"^The archive lacks 9 minutes: make it with --make 500 --voices DIR\.$"):
        list(long.fitting(files, 600))


def test_the_longest_run_is_of_words_lost_or_too_many() -> None:
    words = jiwer.process_words("trim both fronts and both hinds today", "trim today today again")
    assert long.longest(words, "delete") == 3
    assert long.longest(jiwer.process_words("no thrush", "no no no thrush"), "insert") == 2


def test_the_list_has_the_gold_of_what_is_there(tmp_path: Path) -> None:
    take, other = tune_takes()[:2]
    path_of(take, tmp_path).parent.mkdir()
    write_wav(path_of(take, tmp_path), np.zeros(10), RATE)
    write_list([take, other], tmp_path)
    (line,) = (tmp_path / "tune.jsonl").read_text(encoding="utf-8").splitlines()
    assert take.memo["id"] in line
    assert '"condition": "clean"' in line


class _Counting:
    """An ear that hears nothing and counts how often it was asked."""

    name = "counting"
    device: Device = "cpu"

    def __init__(self) -> None:
        self.times = 0

    def identity(self, names: Sequence[str]) -> str:
        return repr(names)

    def load(self) -> None:
        pass

    def hear(self, path: Path, names: Sequence[str]) -> Heard:
        self.times += 1
        return Heard(memo_of(path), Transcript(text=""))


def test_what_was_heard_is_remembered_until_the_sound_or_the_names_change(tmp_path: Path) -> None:
    ear = _Counting()
    listener = Listener(ear, tmp_path / "heard")
    path = tmp_path / "a.wav"
    write_wav(path, np.zeros(1600), RATE)
    first = listener.hear(path, ["Pip"])
    assert listener.hear(path, ["Pip"]) == first
    assert ear.times == 1
    listener.hear(path, ["Pep"])
    write_wav(path, np.zeros(3200), RATE)
    listener.hear(path, ["Pip"])
    assert ear.times == 3


def test_no_core_seconds_are_told_of_a_graphics_card(tmp_path: Path) -> None:
    ear = _Counting()
    ear.device = "cuda"
    write_wav(tmp_path / "a.wav", np.zeros(1600), RATE)
    heard = Listener(ear, tmp_path / "heard").hear(tmp_path / "a.wav", [])
    figures = Figures()
    figures.add({"text": "thrush"}, heard, None, TERMS)
    assert (heard.work_s, figures.row()[-1]) == (None, "")


def test_files_heard_in_other_processes_need_no_hearing_again(tmp_path: Path) -> None:
    paths = [tmp_path / "short.wav", tmp_path / "long.wav"]
    for path, samples in zip(paths, (16000, 32000), strict=True):
        write_wav(path, np.zeros(samples), RATE)
    (ear,) = ears([UNBIASED], load_vocabulary(), threads=1)
    try:
        assert ear.identity([])
        fill([(path, ()) for path in paths], [UNBIASED], tmp_path / "heard", "cpu", processes=1)
    except WeightsError as error:
        pytest.skip(f"the packaged weights are not installed: {error}")
    kept = sorted((tmp_path / "heard").iterdir())
    assert [Listener(ear, tmp_path / "heard").hear(path, []).memo.seconds for path in paths] == [1.0, 2.0]
    assert len(kept) == 2
    assert sorted((tmp_path / "heard").iterdir()) == kept


def test_half_a_minute_of_noise_gives_no_facts(tmp_path: Path) -> None:
    """Through the real recogniser, reader and judge: wind, hammer and engine say nothing."""
    vocabulary = load_vocabulary()
    ear = OwnEar(OURS, HearingSettings(), vocabulary)
    try:
        assert ear.identity([])
    except WeightsError as error:
        pytest.skip(f"the packaged weights are not installed: {error}")
    bench = Bench(vocabulary, load_reader(vocabulary), TERMS, tmp_path)
    rows = noise_rows(bench, [Listener(ear, tmp_path / "heard")], minutes=0.5)
    assert [(name, words, facts) for name, _, _, _, words, facts, *_ in rows] == [
        ("wind", "0", "0"),
        ("hammer", "0", "0"),
        ("diesel", "0", "0"),
    ]
