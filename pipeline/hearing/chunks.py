"""How much sound a WAV or CAF file announces in its header: decoders quietly make do with what is there."""

from __future__ import annotations

from typing import BinaryIO

from pipeline.hearing.containers import CAF, WAV, Container

_MAX_CHUNKS = 1000


def announced_share(handle: BinaryIO, size: int, container: Container) -> float:
    """Announced bytes of sound over those that the file of ``size`` bytes holds: 1.0 when whole or not announced.

    2.0 means that half of the sound is missing. Leaves ``handle`` at the start.
    """
    if container not in (WAV, CAF):
        return 1.0
    start, announced = _wav_data(handle, size) if container is WAV else _caf_data(handle, size)
    handle.seek(0)
    held = size - start
    return max(1.0, announced / held) if start and held > 0 else 1.0


def _wav_data(handle: BinaryIO, size: int) -> tuple[int, int]:
    """Offset and announced length of the data chunk; (0, 0) without one or for a length left open."""
    position = 12
    for _ in range(_MAX_CHUNKS):
        if position >= size:  # before it is sought: a broken length leads to places that no file has
            break
        handle.seek(position)
        header = handle.read(8)
        if len(header) < 8:
            break
        length = int.from_bytes(header[4:], "little")
        if header[:4] == b"data":
            return (0, 0) if length in (0, 0xFFFFFFFF) else (position + 8, length)
        position += 8 + length + length % 2
    return 0, 0


def _caf_data(handle: BinaryIO, size: int) -> tuple[int, int]:
    """As for WAV; the length of a recording that was never closed is -1."""
    position = 8
    for _ in range(_MAX_CHUNKS):
        if position >= size:
            break
        handle.seek(position)
        header = handle.read(12)
        if len(header) < 12:
            break
        length = int.from_bytes(header[4:], "big", signed=True)
        if header[:4] == b"data":
            return (0, 0) if length <= 0 else (position + 12, length)
        if length < 0:
            break
        position += 12 + length
    return 0, 0
