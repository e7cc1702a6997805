"""What a file is, told by its first bytes alone: the containers that recorders write, and what else it may be."""

from __future__ import annotations

from dataclasses import dataclass

HEAD_BYTES = 4096


@dataclass(frozen=True)
class Container:
    """A container that memos come in: its name for people and the demuxer that may open it."""

    name: str
    demuxer: str


WAV = Container("WAV", "wav")
FLAC = Container("FLAC", "flac")
MP3 = Container("MP3", "mp3")
MP4 = Container("M4A", "mov")
THREE_GP = Container("3GP", "mov")
CAF = Container("CAF", "caf")
OGG = Container("Ogg", "ogg")
WEBM = Container("WebM", "matroska")
AMR = Container("AMR", "amr")

# First bytes are those of the formats' own specifications: RFC 9639 (FLAC), RFC 3533 (Ogg), RFC 8794 (EBML),
# RFC 4867 (AMR), ISO/IEC 14496-12 (ftyp); the others are from memory.
_SOUND_STARTS = (
    (b"fLaC", FLAC),
    (b"caff", CAF),
    (b"OggS", OGG),
    (b"#!AMR\n", AMR),
    (b"#!AMR-WB\n", AMR),
)
_OTHER_STARTS = (
    (b"\x89PNG", "a picture"),
    (b"\xff\xd8\xff", "a picture"),
    (b"GIF8", "a picture"),
    (b"BM", "a picture"),
    (b"II*\x00", "a picture"),
    (b"MM\x00*", "a picture"),
    (b"%PDF", "a PDF document"),
    (b"PK\x03\x04", "an archive"),
    (b"PK\x05\x06", "an archive"),
    (b"\x1f\x8b", "an archive"),
    (b"7z\xbc\xaf", "an archive"),
    (b"Rar!", "an archive"),
    (b"BZh", "an archive"),
    (b"\xfd7zXZ", "an archive"),
    (b"\x28\xb5\x2f\xfd", "an archive"),
    (b"MZ", "a program"),
    (b"\x7fELF", "a program"),
    (b"SQLite format 3", "a database"),
)
_PLAYLIST_STARTS = ("#extm3u", "ffconcat", "[playlist]", "<asx", "<smil", "file '", "file:")
_PICTURE_BRANDS = (b"heic", b"heix", b"hevc", b"heim", b"heis", b"mif1", b"msf1", b"avif", b"avis", b"crx ")


def sniff(head: bytes) -> Container | None:
    """The container that starts with ``head`` (up to HEAD_BYTES bytes), or None when it is no known sound."""
    for start, container in _SOUND_STARTS:
        if head.startswith(start):
            return container
    if head[:4] in (b"RIFF", b"RF64", b"BW64") and head[8:12] == b"WAVE":
        return WAV
    if head[4:8] == b"ftyp":
        return _by_brand(head[8:12])
    if head.startswith(b"\x1a\x45\xdf\xa3"):
        return WEBM if b"webm" in head[:128] or b"matroska" in head[:128] else None
    if head.startswith(b"ID3"):
        return _behind_tag(head)
    return MP3 if _is_mp3_frame(head) else None


def what_else(head: bytes) -> str:
    """A few words for a file that is no known sound: "a playlist", "a picture", "plain text"."""
    for start, words in _OTHER_STARTS:
        if head.startswith(start):
            return words
    if head.startswith(b"RIFF"):
        return "a picture" if head[8:12] == b"WEBP" else "a video"
    if head[4:8] == b"ftyp":
        return "a picture"
    if not head.strip(b"\x00"):
        return "nothing but zero bytes"
    return _what_text(head) or "a file of a kind that recorders do not write"


def _by_brand(brand: bytes) -> Container | None:
    if brand.lower() in _PICTURE_BRANDS:
        return None
    return THREE_GP if brand[:2].lower() == b"3g" else MP4


def _behind_tag(head: bytes) -> Container:
    size = 10 + sum((byte & 0x7F) << shift for byte, shift in zip(head[6:10], (21, 14, 7, 0), strict=False))
    return FLAC if head[size : size + 4] == b"fLaC" else MP3


def _is_mp3_frame(head: bytes) -> bool:
    """Whether ``head`` starts with an MPEG audio layer III frame header and a second one follows where it must."""
    length = _mp3_frame_length(head)
    if not length:
        return False
    follower = head[length : length + 4]
    return len(follower) < 4 or _mp3_frame_length(follower) > 0


def _mp3_frame_length(head: bytes) -> int:
    """Bytes of the layer III frame whose header ``head`` starts with; 0 when it is none (ISO/IEC 11172-3, 13818-3)."""
    if len(head) < 4 or head[0] != 0xFF or head[1] & 0xE0 != 0xE0:
        return 0
    version, layer = (head[1] >> 3) & 3, (head[1] >> 1) & 3
    rate_index, sample_index, padding = head[2] >> 4, (head[2] >> 2) & 3, (head[2] >> 1) & 1
    if version == 1 or layer != 1 or rate_index in (0, 15) or sample_index == 3:
        return 0
    newer = (8, 16, 24, 32, 40, 48, 56, 64, 80, 96, 112, 128, 144, 160)
    older = (32, 40, 48, 56, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320)
    kilobits = (older if version == 3 else newer)[rate_index - 1]
    hertz = (44100, 48000, 32000)[sample_index] // {3: 1, 2: 2, 0: 4}[version]
    return (144 if version == 3 else 72) * kilobits * 1000 // hertz + padding


def _what_text(head: bytes) -> str | None:
    text = head.decode("utf-8", "replace")
    strange = sum(character == "\ufffd" or (character < " " and character not in "\t\r\n\f") for character in text)
    if strange > 0.02 * len(text) + 1:
        return None
    start = text.lstrip("\ufeff \t\r\n").lower()
    if start.startswith(_PLAYLIST_STARTS):
        return "a playlist"
    if start.startswith(("<!doctype html", "<html")):
        return "a web page"
    if start.startswith("<"):
        return "an XML document"
    return "plain text"
