"""Real people, real recordings: readings and spoken card names with their texts, from Debian's test data."""

from __future__ import annotations

import re
import wave
from pathlib import Path

import jiwer
import numpy as np
import pytest
from num2words import num2words

from pipeline.errors import NoSpeechError
from pipeline.hearing.recognise import Recogniser
from pipeline.hearing.settings import HearingSettings
from pipeline.record import FlagKind
from pipeline.vocabulary import load_vocabulary

DATA = Path("/usr/share/pocketsphinx/test/data")

needs_data = pytest.mark.skipif(not DATA.is_dir(), reason="Debian's pocketsphinx-testdata is not installed")


@pytest.fixture(scope="module")
def recogniser() -> Recogniser:
    """One recogniser for the module: the model is loaded once, without the trade's words as bias."""
    return Recogniser(HearingSettings(bias=False), load_vocabulary())


def reference(folder: str) -> dict[str, str]:
    """File stem to spoken text, from the folder's transcription file."""
    (path,) = (DATA / folder).glob("*transcription")
    lines = re.findall(r"^(.*)\((\S+)\)\s*$", path.read_text(), re.MULTILINE)
    return {name: plain(re.sub(r"</?s>", " ", text)) for text, name in lines}


def plain(text: str) -> str:
    """Lower-case words, figures spelled out."""
    spelled = re.sub(r"\d+", lambda figure: f" {num2words(int(figure[0]))} ", text.lower())
    return " ".join(re.findall(r"[a-z']+", spelled))


def error_rate(recogniser: Recogniser, folder: str) -> float:
    texts = reference(folder)
    said, heard = [], []
    for name, text in texts.items():
        result = recogniser.hear(DATA / folder / f"{name}.wav")
        transcript = result.transcript
        assert all(transcript.text[word.start : word.end] == word.text for word in transcript.words)
        said.append(text)
        heard.append(plain(transcript.text))
    return jiwer.wer(said, heard)


@needs_data
def test_readings_are_heard(recogniser: Recogniser) -> None:
    assert error_rate(recogniser, "librivox") < 0.09  # 4 or 6 of 71 words, by how the processor rounds


@needs_data
def test_spoken_cards_are_heard(recogniser: Recogniser) -> None:
    assert error_rate(recogniser, "cards") < 0.25  # measured 0.14 (three words of 21)


@needs_data
def test_words_lie_where_they_are_spoken(recogniser: Recogniser, tmp_path: Path) -> None:
    """Five seconds of silence before the speech move every word by five seconds."""
    source = DATA / "cards" / "001.wav"
    with wave.open(str(source)) as reader:
        rate, frames = reader.getframerate(), reader.readframes(reader.getnframes())
    later = tmp_path / "later.wav"
    with wave.open(str(later), "wb") as writer:
        writer.setparams((1, 2, rate, 0, "NONE", "not compressed"))
        writer.writeframes(np.zeros(5 * rate, "<i2").tobytes() + frames + np.zeros(rate, "<i2").tobytes())
    first, second = (recogniser.hear(path).transcript.words for path in (source, later))
    assert second[0].start_s - first[0].start_s == pytest.approx(5, abs=0.5)
    assert second[-1].end_s - first[-1].end_s == pytest.approx(5, abs=0.5)


@needs_data
def test_half_a_reading_is_flagged_as_cut_off(recogniser: Recogniser, tmp_path: Path) -> None:
    source = next(iter(sorted((DATA / "librivox").glob("*.wav"))))
    with wave.open(str(source)) as reader:
        rate, frames = reader.getframerate(), np.frombuffer(reader.readframes(reader.getnframes()), "<i2")
    level = np.abs(frames[rate : rate * 3].astype(np.int32))
    end = rate + int(np.convolve(level, np.ones(800), "same").argmax())
    path = tmp_path / "half.wav"
    with wave.open(str(path), "wb") as writer:
        writer.setparams((1, 2, rate, 0, "NONE", "not compressed"))
        writer.writeframes(frames[:end].tobytes())
    reasons = [flag.reason for flag in recogniser.hear(path).flags if flag.kind is FlagKind.SOUND]
    assert any("stops in the middle of speech" in reason for reason in reasons)


@pytest.mark.parametrize("level", [0.0, 0.1])
def test_ten_minutes_of_silence_or_noise_give_no_words(recogniser: Recogniser, tmp_path: Path, level: float) -> None:
    noise = np.random.default_rng(5).standard_normal(600 * 16_000) * level
    path = tmp_path / "2026-03-02.wav"
    with wave.open(str(path), "wb") as writer:
        writer.setparams((1, 2, 16_000, 0, "NONE", "not compressed"))
        writer.writeframes((noise.clip(-1, 1) * 32767).astype("<i2").tobytes())
    with pytest.raises(NoSpeechError, match="Nobody speaks in"):
        recogniser.hear(path)
