"""The benches as a whole: found by name, run as they are, remembered, and told by the README as they were measured."""

from __future__ import annotations

import re
import subprocess
import tomllib
from importlib.util import find_spec
from pathlib import Path

import pytest

from tests.bench import __main__ as benches
from tests.bench import branches, profile
from tests.bench.history import RESULTS, add_rows, last_rows, rows_of
from tests.bench.judging.outcomes import Tally
from tests.bench.measured import Measured, NotMeasuredError, against, ends, listed, percent, rounded
from tests.bench.readme import README, TEMPLATES, blocks, with_figures, wrapped
from tests.bench.silent import groups
from tests.bench.stopwatch import Spent, Stopwatch
from tests.bench.wheel import NEEDED, faults

ENDURED = re.compile(r"^\|.*\| `(\w+)` \| ([\d,; ]+) \| ([\d,; ]+) \|$", re.MULTILINE)


@pytest.fixture
def started(monkeypatch: pytest.MonkeyPatch) -> list[list[str]]:
    """What would be run; nothing is."""
    commands: list[list[str]] = []

    def ended(command: list[str]) -> subprocess.CompletedProcess[str]:
        commands.append(command[1:])
        return subprocess.CompletedProcess(command, 0 if "tests.bench.phrases" not in command else 1)

    monkeypatch.setattr("tests.bench.__main__.subprocess.run", ended)
    return commands


@pytest.mark.parametrize("name", benches.BENCHES)
def test_every_bench_is_there_and_has_a_history(name: str) -> None:
    assert find_spec(benches.BENCHES[name].module) is not None
    assert rows_of(benches.BENCHES[name].history)


def test_without_a_name_the_benches_are_listed(capsys: pytest.CaptureFixture[str], started: list[list[str]]) -> None:
    assert benches.main([]) == 0
    listed_ones = [line.split()[0] for line in capsys.readouterr().out.splitlines()]
    assert listed_ones == list(benches.BENCHES)
    assert started == []


def test_benches_run_by_name_with_what_is_passed_on(started: list[list[str]]) -> None:
    assert benches.main(["reading", "startup"]) == 0
    assert benches.main(["endurance", "--", "--part", "kills"]) == 0
    assert started == [
        ["-m", "tests.bench.reading"],
        ["-m", "tests.bench.startup"],
        ["-m", "tests.endurance", "--full", "--part", "kills"],
    ]


def test_all_are_those_that_need_nothing_besides(started: list[list[str]], capsys: pytest.CaptureFixture[str]) -> None:
    assert benches.main(["--all"]) == 1
    assert [command[1].rpartition(".")[2] for command in started] == [
        *("reading", "marks", "profile", "startup", "store", "chores", "export", "pages", "evening", "silent", "wheel"),
        *("phrases", "judging"),
    ]
    assert capsys.readouterr().err == "The bench phrases failed.\n"


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        (["farriery"], "there is no bench farriery; there are reading, "),
        (["reading", "startup", "--", "open"], "what stands behind -- is for one bench; name it"),
    ],
)
def test_what_cannot_be_run_is_said(
    given: list[str], sentence: str, capsys: pytest.CaptureFixture[str], started: list[list[str]]
) -> None:
    with pytest.raises(SystemExit):
        benches.main(given)
    assert sentence in capsys.readouterr().err
    assert started == []


def test_a_history_grows_behind_its_first_line(tmp_path: Path) -> None:
    add_rows("trial", ("what", "ms"), [("open", 3), ("shut", 4)], tmp_path)
    add_rows("trial", ("what", "ms"), [("open", 5)], tmp_path)
    rows = rows_of(tmp_path / "trial.csv")
    assert [(row["what"], row["ms"]) for row in rows] == [("open", "3"), ("shut", "4"), ("open", "5")]
    assert all(re.fullmatch(r"\d{4}-\d\d-\d\d", row["day"]) and row["version"] for row in rows)
    assert {key: row["ms"] for key, row in last_rows(rows, "what").items()} == {("open",): "5", ("shut",): "4"}
    assert rows_of(tmp_path / "none.csv") == []


def test_a_step_is_timed_without_the_steps_inside_it() -> None:
    times = iter([Spent(0, 0), Spent(1, 2), Spent(3, 6), Spent(4, 8), Spent(9, 10), Spent(10, 20)])
    watch = Stopwatch(lambda: next(times))
    with watch.step("outer"), watch.step("inner"):
        pass
    with watch.step("inner"):
        pass
    assert watch.spent == {"inner": Spent(2 + 1, 4 + 10), "outer": Spent(4 - 2, 8 - 4)}


class Hand:
    """Something whose calls are watched."""

    def __init__(self) -> None:
        self.nails = 6

    def drive(self, more: int) -> int:
        return self.nails + more

    @classmethod
    def made(cls) -> Hand:
        return cls()


def test_calls_are_watched_and_still_do_their_work() -> None:
    watch = Stopwatch()
    given: list[int] = []
    watch.watch(Hand, "drive", "driving", then=given.append)
    watch.watch(Hand, "made", "making")
    assert Hand.made().drive(2) == 8
    assert given == [8]
    assert sorted(watch.spent) == ["driving", "making"]


def test_a_demo_is_shared_out_to_its_steps_and_the_rest() -> None:
    watch = Stopwatch()
    watch.spent = {"hearing": Spent(16, 8), "reading": Spent(1, 1)}
    rows = {row[0]: row[1:] for row in profile.table(watch, Spent(18, 10), sound_s=60)}
    assert rows["hearing"] == ("16.00", "8.00", "0.8000", "")
    assert rows["reading"] == ("1.00", "1.00", "0.1000", "<= 10%")
    assert rows["keeping"] == ("0.00", "0.00", "0.0000", "<= 10%")
    assert rows["start and the rest"] == ("1.00", "1.00", "0.1000", "<= 10%")
    assert rows["length of the sound"] == ("", "60.0", "", "")


def test_noises_of_one_strength_are_told_together() -> None:
    wind, hammer, clean = Tally(), Tally(), Tally()
    assert groups({"wind15": wind, "clean": clean, "hammer15": hammer, "wind5": wind}) == {
        "kept sound, 15 dB": [wind, hammer],
        "kept sound, clean": [clean],
        "kept sound, 5 dB": [wind],
    }


@pytest.mark.parametrize(
    ("told", "expected"),
    [
        (rounded(0.815, 2), "0.82"),
        (rounded("2103010"), "2,103,010"),
        (rounded(2.5), "3"),
        (percent(0.0545), "5 %"),
        (percent("0.0545", 1), "5.5 %"),
        (ends("0.0136", "0.0646", 1), "1.4 to 6.5"),
        (listed([1.126, 2, 3], 2), "1.13, 2.00 and 3.00"),
        (against(150.4, 150), "**150**"),
        (against("1.96", 2, 1), "2.0"),
    ],
)
def test_figures_are_written_as_people_round(told: str, expected: str) -> None:
    assert told == expected


def test_the_readme_tells_what_was_measured_last() -> None:
    readme = README.read_text(encoding="utf-8")
    assert sorted(blocks(readme)) == sorted(path.stem for path in TEMPLATES.glob("*.md"))
    stale = "the README's figures are stale: run python -m tests.bench --readme, and keep their words in figures/"
    assert with_figures(readme, Measured()) == readme, stale


def test_another_figure_makes_the_readme_stale(tmp_path: Path) -> None:
    for path in RESULTS.glob("*.csv"):
        (tmp_path / path.name).write_bytes(path.read_bytes())
    readme = README.read_text(encoding="utf-8")
    columns = ("answers", "keys", "wrong_before", "wrong_after")
    add_rows("evening", columns, [(11, 12, 3, 2)], tmp_path)
    told = " ".join(with_figures(readme, Measured(tmp_path)).split())
    assert "in 11 answers with 12 keys; of 3 wrong facts, 2 stay" in told


def test_what_was_not_measured_yet_is_told_once_it_is(tmp_path: Path) -> None:
    for path in RESULTS.glob("*.csv"):
        (tmp_path / path.name).write_bytes(path.read_bytes())
    for name in ("hearing_speed", "hearing_archive", "hearing_long"):
        (tmp_path / f"{name}.csv").unlink(missing_ok=True)
    readme = README.read_text(encoding="utf-8")
    assert "The whole of `ingest`" not in with_figures(readme, Measured(tmp_path))
    speed = {"memos": 10, "sound_s": 483, "cores": 2, "cpu_ratio": 1.204, "wall_ratio": 0.98}
    speed |= {"ingest_cpu_per_s": 0.181, "plain_cpu_per_s": 0.15}
    add_rows("hearing_speed", tuple(speed), [tuple(speed.values())], tmp_path)
    archive = {"device": "cuda", "kept": 500, "sound_s": 4800, "wall_per_s": 0.0213}
    add_rows("hearing_archive", tuple(archive), [tuple(archive.values())], tmp_path)
    long = {"minutes": 60, "words": 9000, "wer": 0.0712, "longest_lost": 4, "longest_doubled": 2, "most_mb": 1203}
    add_rows("hearing_long", tuple(long), [tuple(long.values())], tmp_path)
    told = " ".join(with_figures(readme, Measured(tmp_path)).split())
    assert "60 minutes of speech take 1,203 MB of memory; of 9000 words 7.1 % are wrong" in told
    assert "never are more than 4 in a row lost or too many" in told
    assert "over a day of 10 memos (8.1 minutes) takes **1.20** times the processor time" in told
    assert "by the clock 0.98 times on 2 cores; 0.18 core seconds a second of sound, plain 0.15." in told
    assert "An archive of 500 memos (80 minutes) on a graphics card: 0.021 seconds a second of sound" in told


def test_a_paragraph_is_filled_and_its_commands_are_not_broken() -> None:
    told = wrapped(f"\n{'word ' * 23}`python -m x`\nmore\n\n| a | b |\n")
    assert told == f"\n{('word ' * 23).strip()}\n`python -m x` more\n\n| a | b |\n\n"


def test_a_figure_that_was_never_measured_names_its_bench(tmp_path: Path) -> None:
    with pytest.raises(NotMeasuredError, match=r"run python -m tests\.bench reading"):
        with_figures(README.read_text(encoding="utf-8"), Measured(tmp_path))


def test_the_readme_tells_of_every_part_of_the_endurance_what_its_last_full_run_came_to() -> None:
    told = [
        (int(cases.replace(",", "")), int(failures))
        for _, many, few in ENDURED.findall(README.read_text(encoding="utf-8"))
        for cases, failures in zip(many.split(";"), few.split(";"), strict=True)
    ]
    last = last_rows(rows_of(benches.ENDURANCE), "part").values()
    assert sorted(told) == sorted((int(row["cases"]), int(row["failures"])) for row in last)


def test_a_wheel_that_is_too_heavy_or_brings_sound_is_told() -> None:
    good = [*NEEDED, "clinchbook-0.1.0.dist-info/METADATA"]
    assert list(faults(good, 1_999_999)) == []
    assert list(faults([*good[1:], "demo_audio/roster.csv", "pipeline/a.m4a"], 2_000_000)) == [
        "The wheel has 2.00 MB, and must stay below 2.",
        "pipeline/vocab/findings.csv is missing from the wheel.",
        "demo_audio/roster.csv does not belong into the wheel.",
        "pipeline/a.m4a does not belong into the wheel.",
    ]


def test_no_logic_is_left_out_of_what_is_covered() -> None:
    settings = tomllib.loads((README.parent / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["coverage"]
    assert settings["run"] == {"source": ["pipeline"], "branch": True}
    assert settings["report"] == {"fail_under": 92, "precision": 1}


def test_branches_are_shares_of_all_and_the_files_with_most_left_are_named() -> None:
    taken = {"covered_branches": 9, "num_branches": 12, "missing_branches": 3}
    whole = {"covered_branches": 0, "num_branches": 0, "missing_branches": 0}
    assert (branches.share(taken), branches.share(whole)) == (0.75, 1.0)
    files = {
        "a.py": {"summary": whole},
        "b.py": {"summary": taken},
        "c.py": {"summary": {**taken, "missing_branches": 4}},
    }
    assert branches.most_left({"files": files}) == [(4, "c.py"), (3, "b.py")]


def test_what_was_not_measured_is_said(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    missing = tmp_path / "none"
    assert branches.main(["--check", "--data", str(missing)]) == 1
    assert capsys.readouterr().err == f"Nothing was measured into {missing}: run pytest --cov first.\n"
