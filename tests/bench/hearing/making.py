"""The bench's sound on disk: a folder a part, a file a take, and a list with each take's gold beside it."""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path

from platformdirs import user_cache_path

from tests.bench.hearing.conditions import disturb, read_wav, write_wav
from tests.bench.hearing.noises import Sound
from tests.bench.hearing.speaking import Spoken, needed, speak
from tests.bench.hearing.takes import CLEAN, FAST, PARTS, Take

SOUND = user_cache_path("clinchbook") / "bench-sound"  # where sound is kept unless told otherwise
# Small talk that has nothing of the trade in it, for the voices in the background.
_SMALL_TALK = {
    "slt": "Did you see the match last night? I turned it off after an hour, there was nothing in it. We had the "
    "neighbours round and somebody brought that lemon cake again. My sister is moving to the coast in the autumn.",
    "awb": "The road was closed by the bridge, so I came round through the village. There was a lorry stuck at the "
    "corner and everybody waited. I said to him, you want to buy a ticket for the raffle, it is for the church roof.",
    "kal16": "So I called the bank and they told me to wait for a letter. That was in January. Nobody has written to "
    "me since. I might go there on Thursday if the weather holds, and take the dog along for a walk.",
    "pico_us": "We ordered the curtains in blue but they sent green. I quite like the green now. The children want to "
    "paint the kitchen as well. Can you pass me that mug, please? There is more coffee in the pot if you want some.",
    "hibari_heart": "Her birthday is on Sunday, and I have no idea what to give her. A book, maybe, or a plant. Last "
    "year we went to the cinema and had dinner at that new place by the river. It was very good, and not too loud.",
}


def path_of(take: Take, sound: Path) -> Path:
    """Where a take lies below the folder ``sound``."""
    return sound / take.part / f"{take.stem}.wav"


def make(takes: Sequence[Take], sound: Path, voices: Path | None) -> None:
    """Make every take that is not there yet and list them all; clean ones are spoken, the others made from those.

    Raises ClinchbookError, with how to get voices, when some are missing and there are none.
    """
    missing = [take for take in takes if not path_of(take, sound).exists()]
    if missing:
        voices = needed(voices, sound)
        _speak_takes(missing, sound, voices)
        if any(take.condition.startswith("voices") for take in missing):
            speak_small_talk(sound, voices)
        talkers = small_talk(sound)
        for take in missing:
            if not _is_spoken(take):
                clean = read_wav(path_of(take.clean, sound))
                write_wav(path_of(take, sound), *disturb(clean, take.condition, take.memo["id"], talkers))
    for part in {take.part for take in takes}:
        write_list(PARTS[part](), sound)


def _is_spoken(take: Take) -> bool:
    return take.condition in (CLEAN, FAST)


def _speak_takes(takes: Sequence[Take], sound: Path, voices: Path) -> None:
    """Speak what these takes are, or are made from, each once."""
    spoken = {take.stem: take for take in (take if _is_spoken(take) else take.clean for take in takes)}
    speak([Spoken(t.memo["text"], t.voice, path_of(t, sound), t.speed) for t in spoken.values()], voices)


def write_list(takes: Sequence[Take], sound: Path) -> None:
    """One line a take that is there: its file, voice, memo and condition, and the memo's gold."""
    rows = [
        {"file": str(path_of(t, sound)), "voice": t.voice, "memo": t.memo["id"], "condition": t.condition, **t.memo}
        for t in takes
        if path_of(t, sound).exists()
    ]
    list_path = sound / f"{takes[0].part}.jsonl"
    list_path.parent.mkdir(parents=True, exist_ok=True)
    list_path.write_text("".join(json.dumps(row, ensure_ascii=False) + "\n" for row in rows), encoding="utf-8")


def speak_small_talk(sound: Path, voices: Path) -> None:
    """Speak what the voices in the background say."""
    speak([Spoken(text, voice, sound / "talk" / f"{voice}.wav") for voice, text in _SMALL_TALK.items()], voices)


def small_talk(sound: Path) -> list[Sound]:
    """The voices in the background, as far as they have been spoken."""
    return [read_wav(path) for path in sorted((sound / "talk").glob("*.wav"))]
