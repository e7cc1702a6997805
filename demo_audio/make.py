"""How the demo's memos were made (development only; nothing here is part of the installed program).

``python demo_audio/make.py --say PATH/say.py [--spoken FOLDER] [FILE ...]``

The scripts are the ``text`` of ``gold.jsonl``; ``voices.csv`` says which voice reads each, how fast, and as which kind
of file a phone would have kept it. ``PATH/say.py`` is any script that takes ``VOICE "text" out.wav SPEED`` and writes
16 kHz mono 16-bit WAV. Room tone and yard noise come from numpy with a fixed seed, the encoding from PyAV in-process,
so that the same speech gives the same files. Of the voices only ``joe`` draws random numbers of its own;
``--spoken FOLDER`` keeps the speech so that a second run need not speak again.

Voices (all synthetic, output free to pass on; the list with the licences is in NOTICE.md): ``joe`` US man,
``hibari_heart`` and the ``af_*`` voices US women, ``pico_gb`` GB woman, ``awb`` Scottish man.
"""

from __future__ import annotations

import argparse
import csv
import hashlib
import json
import subprocess
import sys
import tempfile
import wave
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import av
import numpy as np
from noise import Sound, shaped, unit_power, yard

HERE = Path(__file__).resolve().parent
SPEECH_HZ = 16000
LEAD_S, TAIL_S = 0.5, 0.6  # the thumb is never exact on the button
ROOM_TONE_DB = -62.0  # against full scale
YARD_SNR_DB = 12.0
PEAK = 0.7
BLOCK = 1024
SEED = 20260512


@dataclass(frozen=True)
class Plan:
    """One line of ``voices.csv``; ``stamped_in`` is ``container``, ``stream`` or ``name``."""

    file: str
    voice: str
    speed: float
    container: str
    codec: str
    rate_hz: int
    bit_rate: int
    recorded_at: str
    stamped_in: str
    noise: str


def read_plans(path: Path) -> list[Plan]:
    """The voice plan, in the order of the day; raises KeyError when a column is missing."""
    with path.open(encoding="utf-8", newline="") as lines:
        return [
            Plan(
                file=row["file"],
                voice=row["voice"],
                speed=float(row["speed"]),
                container=row["container"],
                codec=row["codec"],
                rate_hz=int(row["rate_hz"]),
                bit_rate=int(row["bit_rate"]),
                recorded_at=row["recorded_at"],
                stamped_in=row["stamped_in"],
                noise=row["noise"],
            )
            for row in csv.DictReader(lines)
        ]


def read_scripts(path: Path) -> dict[str, str]:
    """File name to the words spoken in it."""
    lines = path.read_text(encoding="utf-8").splitlines()
    return {memo["audio"]: memo["text"] for memo in map(json.loads, lines)}


def speak(say: Path, plan: Plan, text: str, folder: Path) -> Sound:
    """Speech of shape ``(samples,)`` at 16 kHz, -1 to 1; raises CalledProcessError when the voice fails."""
    digest = hashlib.sha256(f"{plan.voice}|{plan.speed}|{text}".encode()).hexdigest()[:16]
    spoken = folder / f"{digest}.wav"  # named for what is said, so that a changed script is spoken anew
    if not spoken.exists():
        command = [sys.executable, str(say), plan.voice, text, str(spoken), str(plan.speed)]
        subprocess.run(command, check=True, capture_output=True)
    with wave.open(str(spoken), "rb") as reader:
        pcm = reader.readframes(reader.getnframes())
    return np.frombuffer(pcm, dtype="<i2") / 32768.0


def on_the_phone(speech: Sound, noise: str, seed: int) -> Sound:
    """The speech with silence around it, room tone, and the yard's noise when ``noise`` says so."""
    rng = np.random.default_rng(seed)
    sound = np.concatenate([np.zeros(int(LEAD_S * SPEECH_HZ)), speech, np.zeros(int(TAIL_S * SPEECH_HZ))])
    tone = unit_power(shaped(rng.standard_normal(len(sound)), SPEECH_HZ, 80.0, 2500.0))
    sound = sound + 10 ** (ROOM_TONE_DB / 20) * tone
    if noise == "yard":
        level = np.sqrt(speech_power(speech) / 10 ** (YARD_SNR_DB / 10))
        sound = sound + level * yard(len(sound), SPEECH_HZ, seed)
    return sound * (PEAK / float(np.abs(sound).max()))


def speech_power(speech: Sound) -> float:
    """Mean square over the blocks that are within 30 dB of the loudest, so that pauses do not count."""
    blocks = speech[: len(speech) // BLOCK * BLOCK].reshape(-1, BLOCK)
    power = np.mean(blocks**2, axis=1)
    return float(np.mean(power[power > power.max() / 1000]))


def encode(sound: Sound, plan: Plan, path: Path) -> None:
    """Write the sound as the plan's container and codec, with the time of the recording where the plan stamps it."""
    with av.open(str(path), "w", format=plan.container, container_options={"fflags": "+bitexact"}) as output:
        stream = output.add_stream(plan.codec, rate=plan.rate_hz, layout="mono")
        if not isinstance(stream, av.AudioStream):
            raise TypeError(f"{plan.codec} is no sound codec")
        if plan.codec == "alac":
            stream.format = av.AudioFormat("s16p")  # the encoder would otherwise choose 24 bits
        if plan.bit_rate:
            stream.bit_rate = plan.bit_rate
        if plan.stamped_in == "container":
            output.metadata["creation_time"] = plan.recorded_at
        elif plan.stamped_in == "stream":
            stream.metadata["creation_time"] = plan.recorded_at
        for frame in frames(sound):
            output.mux(stream.encode(frame))
        output.mux(stream.encode(None))


def frames(sound: Sound) -> Iterator[av.AudioFrame]:
    """Cut the sound into 16-bit mono frames; the encoder resamples them itself."""
    pcm = np.round(sound * 32767).astype("<i2")
    for start in range(0, len(pcm), BLOCK):
        frame = av.AudioFrame.from_ndarray(pcm[np.newaxis, start : start + BLOCK], format="s16", layout="mono")
        frame.sample_rate = SPEECH_HZ
        frame.pts = start
        yield frame


def main() -> None:
    """Speak and encode the named files, or all of them."""
    parser = argparse.ArgumentParser(description="Make the demo's memos.")
    parser.add_argument("--say", type=Path, required=True, help="the script that speaks: VOICE TEXT OUT.wav SPEED")
    parser.add_argument("--spoken", type=Path, help="keep the plain speech in this folder and use what lies there")
    parser.add_argument("files", nargs="*", metavar="FILE", help="only these files of voices.csv")
    arguments = parser.parse_args()
    scripts = read_scripts(HERE / "gold.jsonl")
    plans = read_plans(HERE / "voices.csv")
    with tempfile.TemporaryDirectory() as scratch:
        folder = arguments.spoken or Path(scratch)
        folder.mkdir(parents=True, exist_ok=True)
        for number, plan in enumerate(plans):
            if arguments.files and plan.file not in arguments.files:
                continue
            speech = speak(arguments.say, plan, scripts[plan.file], folder)
            sound = on_the_phone(speech, plan.noise, SEED + number)
            encode(sound, plan, HERE / plan.file)
            print(f"{plan.file}: {len(sound) / SPEECH_HZ:.1f} s")


if __name__ == "__main__":
    main()
