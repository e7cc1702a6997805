"""A checked memo becomes sound: 16 kHz mono samples, with what the container says about itself."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

import av
import numpy as np

from pipeline.errors import ClinchbookError, DamagedSoundError, NoSoundTrackError, TooLongError
from pipeline.hearing.chunks import announced_share
from pipeline.hearing.intake import Intake
from pipeline.hearing.readable import Readable
from pipeline.record import Flag, FlagKind

if TYPE_CHECKING:
    from av.audio.frame import AudioFrame
    from av.audio.resampler import AudioResampler
    from av.audio.stream import AudioStream
    from av.container import InputContainer

SAMPLE_RATE = 16_000
Samples = np.ndarray[tuple[int], np.dtype[np.float32]]

# No file named inside a container is ever opened, and nothing but the open handle is read.
_SAFE_OPTIONS = {"protocol_whitelist": "file", "enable_drefs": "0", "use_absolute_path": "0"}
# A header that is short by less than both is rounding or encoder padding.
_LOST_SECONDS, _LOST_SHARE = 1.0, 0.03


@dataclass(frozen=True)
class Sound:
    """Decoded sound: float32 samples in [-1, 1] at 16 kHz, mono; ``declared_s`` is the length that the file claims."""

    samples: Samples
    declared_s: float | None = None
    broken_packets: int = 0
    metadata: tuple[dict[str, str], ...] = ()
    flags: list[Flag] = field(default_factory=list)

    @property
    def seconds(self) -> float:
        """Decoded length in seconds."""
        return len(self.samples) / SAMPLE_RATE


def decode(memo: Intake, max_minutes: float = 60) -> Sound:
    """Decode an open memo to its end, or to the cap.

    Raises NoSoundTrackError, DamagedSoundError when nothing can be decoded, and TooLongError as soon as more than
    ``max_minutes`` are decoded; sound that is merely incomplete gets a Flag of kind SOUND.
    """
    handle = Readable(memo.handle)
    with _open(memo, handle) as container:
        if not container.streams.audio:
            raise NoSoundTrackError(f"{memo.path.name} holds no sound track.")
        stream = container.streams.audio[0]
        declared = _declared_seconds(container, stream)
        metadata = (dict(container.metadata), dict(stream.metadata))
        reader = _Reader(max_minutes)
        try:
            chunks = list(reader.chunks(container, stream))
        except _OverCap as error:
            raise TooLongError(
                f"{memo.path.name} is longer than {max_minutes:g} minutes, the longest allowed."
            ) from error
    if handle.error is not None:
        reason = (handle.error.strerror or type(handle.error).__name__).lower()
        raise ClinchbookError(f"{memo.path} cannot be read to its end: {reason}.") from handle.error
    if not chunks:
        raise DamagedSoundError(f"{memo.path.name} is damaged: no sound in it can be decoded.")
    samples = np.concatenate(chunks)
    share = announced_share(memo.handle, memo.size, memo.container)
    if share > 1:
        declared = share * len(samples) / SAMPLE_RATE
    sound = Sound(samples, declared, reader.broken, metadata)
    return replace(sound, flags=_doubts(sound))


def _open(memo: Intake, handle: Readable) -> InputContainer:
    memo.handle.seek(0)
    try:
        return av.open(
            handle, mode="r", format=memo.container.demuxer, options=_SAFE_OPTIONS, metadata_errors="replace"
        )
    except (av.FFmpegError, ValueError) as error:
        raise DamagedSoundError(f"{memo.path.name} is damaged or cut off: it cannot be opened as sound.") from error


def _declared_seconds(container: InputContainer, stream: AudioStream) -> float | None:
    lengths = []
    if container.duration:
        lengths.append(container.duration / 1_000_000)
    if stream.duration and stream.time_base:
        lengths.append(float(stream.duration * stream.time_base))
    return max(lengths, default=None)


class _OverCap(ClinchbookError):
    """More sound than allowed."""


class _Reader:
    """Decodes packet by packet, counting what is broken and stopping at the cap."""

    def __init__(self, max_minutes: float) -> None:
        self.broken = 0
        self._room = int(max_minutes * 60 * SAMPLE_RATE)
        self._resampler: AudioResampler | None = None
        self._shape: tuple[str, str, int] | None = None

    def chunks(self, container: InputContainer, stream: AudioStream) -> Iterator[Samples]:
        """Mono 16 kHz pieces in their order; raises _OverCap."""
        for frame in self._frames(container, stream):
            if frame.samples / frame.sample_rate * SAMPLE_RATE > self._room + SAMPLE_RATE:
                raise _OverCap
            yield from self._resampled(frame)
        yield from self._flushed()

    def _frames(self, container: InputContainer, stream: AudioStream) -> Iterator[AudioFrame]:
        packets = container.demux(stream)
        while True:
            try:
                packet = next(packets, None)
            except av.FFmpegError:
                self.broken += 1
                return
            if packet is None:
                return
            try:
                frames = packet.decode()
            except av.FFmpegError:
                self.broken += 1
                continue
            yield from (frame for frame in frames if frame.samples and frame.sample_rate)

    def _resampled(self, frame: AudioFrame) -> Iterator[Samples]:
        shape = (frame.format.name, frame.layout.name, frame.sample_rate)
        if shape != self._shape:
            yield from self._flushed()
            self._shape = shape
            self._resampler = av.AudioResampler(format="flt", layout="mono", rate=SAMPLE_RATE)
        frame.pts = None  # gaps and jumps in time stamps must not become errors or silence
        yield from map(self._taken, self._resample(frame))

    def _flushed(self) -> Iterator[Samples]:
        yield from map(self._taken, self._resample(None))
        self._resampler = None

    def _resample(self, frame: AudioFrame | None) -> list[AudioFrame]:
        """What comes of a frame; nothing of one whose rate or channels no sound has, which counts as broken."""
        if self._resampler is None:
            return []
        try:
            return self._resampler.resample(frame)
        except av.FFmpegError:
            self.broken += 1
            self._resampler = self._shape = None
            return []

    def _taken(self, frame: AudioFrame) -> Samples:
        samples: Samples = np.asarray(frame.to_ndarray(), dtype=np.float32).reshape(-1)
        self._room -= len(samples)
        if self._room < 0:
            raise _OverCap
        return np.nan_to_num(samples, nan=0.0, posinf=0.0, neginf=0.0).clip(-1, 1)


def _doubts(sound: Sound) -> list[Flag]:
    flags = []
    declared, decoded = sound.declared_s, sound.seconds
    if declared is not None and declared - decoded > max(_LOST_SECONDS, _LOST_SHARE * declared):
        reason = (
            f"the recording says it is {declared:.0f} seconds long, but only {decoded:.0f} seconds could be heard: "
            "part of it is damaged or missing"
        )
        flags.append(Flag(kind=FlagKind.SOUND, reason=reason))
    if sound.broken_packets:
        reason = f"{sound.broken_packets} pieces of the recording are damaged and were left out"
        flags.append(Flag(kind=FlagKind.SOUND, reason=reason))
    return flags
