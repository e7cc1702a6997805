"""Flags win over the environment, the environment over defaults; a wrong value is a sentence."""

from __future__ import annotations

import subprocess
import sys

import pytest
from pydantic import ValidationError

from pipeline.errors import SettingsError
from pipeline.hearing.settings import HearingSettings


def test_flags_win_over_environment_over_defaults(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("CLINCHBOOK_THREADS", "3")
    monkeypatch.setenv("CLINCHBOOK_MODEL", "tiny.en")
    monkeypatch.setenv("CLINCHBOOK_BIAS", "no")
    settings = HearingSettings.from_environment(threads=1, model=None)
    assert (settings.threads, settings.model, settings.bias) == (1, "tiny.en", False)
    assert settings.allow_download is False
    assert settings.max_minutes == 60


@pytest.mark.parametrize(
    ("variable", "value", "words"),
    [
        ("CLINCHBOOK_THREADS", "many", "CLINCHBOOK_THREADS is 'many', but it must be a whole number of cores"),
        ("CLINCHBOOK_BEAM_SIZE", "0", "CLINCHBOOK_BEAM_SIZE is '0', but it must be a whole number from 1 to 10"),
        ("CLINCHBOOK_MAX_MINUTES", "-1", "minutes above 0"),
        ("CLINCHBOOK_DEVICE", "abacus", "cpu, cuda or auto"),
        ("CLINCHBOOK_ALLOW_DOWNLOAD", "perhaps", "yes or no"),
    ],
)
def test_a_wrong_variable_is_named(monkeypatch: pytest.MonkeyPatch, variable: str, value: str, words: str) -> None:
    monkeypatch.setenv(variable, value)
    with pytest.raises(SettingsError, match=words):
        HearingSettings.from_environment()


def test_an_unknown_flag_is_named() -> None:
    with pytest.raises(SettingsError, match="no setting called 'modle'"):
        HearingSettings.from_environment(modle="base")


def test_settings_are_frozen() -> None:
    with pytest.raises(ValidationError, match="frozen"):
        HearingSettings().__setattr__("threads", 4)


def test_settings_load_nothing_heavy() -> None:
    heavy = "numpy av ctranslate2 faster_whisper onnxruntime"
    script = f"import sys, pipeline.hearing.settings; print(set({heavy.split()}) & set(sys.modules))"
    result = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True)
    assert result.stdout.strip() == "set()"
