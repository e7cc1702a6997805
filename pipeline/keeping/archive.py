"""A back-up as one encrypted file, of open parts: any zip program and any age program open it without clinchbook.

The file is a zip of ``key.age``, a key encrypted with the passphrase (age's scrypt recipient), and ``store.tar.age``,
a tar of the store encrypted to that key (X25519, ChaCha20-Poly1305 in authenticated portions), so that a store of any
size passes through little memory and no byte of it is written in the clear. Format: age-encryption.org/v1.
"""

from __future__ import annotations

import errno
import hashlib
import io
import os
import re
import tarfile
import time
import zipfile
import zlib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from pipeline.errors import BackupError, PassphraseError
from pipeline.keeping.database import sync_file
from pipeline.keeping.location import DATABASE_NAME, ORIGINALS_NAME, make_private_folder
from pipeline.keeping.own_words import WORDS_NAME

# NIST SP 800-63B (Grassi et al. 2017, Digital Identity Guidelines, section 5.1.1.2): at least 8 characters.
LEAST_PASSPHRASE = 8
_KEY, _STORE, _HELP = "key.age", "store.tar.age", "HOW TO OPEN.txt"
_BLOCK = 1 << 18
_LARGEST_KEY = 1 << 16
_NO_ZIP = (zipfile.BadZipFile, zlib.error, KeyError, RuntimeError, ValueError, EOFError)  # what zipfile complains with
_MEMBER = re.compile(
    rf"{re.escape(DATABASE_NAME)}|{WORDS_NAME}/[a-z_]+\.csv|{ORIGINALS_NAME}/[0-9a-f]{{2}}/[0-9a-f]{{64}}\.[a-z0-9]{{1,8}}"
)
_TEXT = """This is an encrypted back-up of a clinchbook store. With clinchbook:

    clinchbook restore THIS-FILE

Without it, unpack this zip file and use any program for the age format (age-encryption.org/v1):

    age --decrypt --identity key.age store.tar.age > store.tar
"""


def write_archive(target: Path, members: list[tuple[str, Path]], passphrase: str) -> None:
    """Write files, each with its name in the store, into an encrypted file at ``target``, synced and read back.

    ``target`` is overwritten; the caller gives it its lasting name. Raises BackupError.
    """
    import pyrage

    key = pyrage.x25519.Identity.generate()
    stream = _Stream(members)
    try:
        with target.open("wb") as file:
            with zipfile.ZipFile(file, "w") as outer:
                outer.writestr(_HELP, _TEXT)
                outer.writestr(_KEY, pyrage.passphrase.encrypt(str(key).encode(), passphrase))
                with outer.open(zipfile.ZipInfo(_STORE), "w", force_zip64=True) as member:
                    pyrage.encrypt_io(stream, member, [key.to_public()])
            file.flush()
            sync_file(file.fileno())
        read_back = _Digest()
        _decrypt(target, passphrase, read_back)
    except (pyrage.EncryptError, OSError) as error:
        raise BackupError(f"The encrypted back-up cannot be written: {_trouble(error) or error}.") from error
    if read_back.digest.digest() != stream.digest.digest():
        raise BackupError("The encrypted back-up is not what was written; try again on another disk.")


def read_archive(source: Path, folder: Path, passphrase: str) -> None:
    """Decrypt a back-up and unpack it into ``folder``, for this user alone.

    Raises PassphraseError for a passphrase that does not open it and BackupError for a file that is damaged or no
    back-up; what was unpacked until then is the caller's to remove.
    """
    packed = folder / "store.tar"
    handle = os.open(packed, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    try:
        with os.fdopen(handle, "wb") as file:
            _decrypt(source, passphrase, file)
        with tarfile.open(packed) as members:
            for member in members:
                _unpack(members, member, folder)
    except tarfile.TarError as error:
        raise BackupError(f"The back-up {source.name} is damaged.") from error
    finally:
        packed.unlink()


def check_archive(source: Path) -> None:
    """Raise BackupError for a file that no passphrase could open, before one is asked for."""
    if not zipfile.is_zipfile(source):
        raise BackupError(f"{source.name} is no encrypted back-up of clinchbook, or it is damaged.")


def _decrypt(source: Path, passphrase: str, target: Any) -> None:
    import pyrage

    try:
        with zipfile.ZipFile(source) as outer:
            with outer.open(_KEY) as sealed:
                key = _open_key(sealed.read(_LARGEST_KEY), passphrase)
            with outer.open(_STORE) as member:
                pyrage.decrypt_io(member, target, [key])
    except _NO_ZIP as error:
        raise BackupError(f"{source.name} is no encrypted back-up of clinchbook, or it is damaged.") from error
    except (pyrage.DecryptError, OSError) as error:
        if _trouble(error):
            raise BackupError(f"The back-up {source.name} cannot be unpacked: {_trouble(error)}.") from error
        raise BackupError(f"The back-up {source.name} is damaged.") from error


# age measures how fast the machine is at this moment and refuses a passphrase that would take it sixteen times as long
# as a new one would: a machine that is busy elsewhere may refuse what it opens a little later.
_TOO_MUCH_WORK = "Excessive work"
_PAUSES_S = (1.0, 5.0, 15.0)


def _open_key(sealed: bytes, passphrase: str) -> Any:
    import pyrage

    pauses_s = iter(_PAUSES_S)
    while True:
        try:
            return pyrage.x25519.Identity.from_str(pyrage.passphrase.decrypt(sealed, passphrase).decode())
        except (pyrage.DecryptError, pyrage.IdentityError, UnicodeDecodeError) as error:
            if _TOO_MUCH_WORK not in str(error):
                raise PassphraseError(
                    "The passphrase does not open this back-up, or the back-up is damaged."
                ) from error
            pause_s = next(pauses_s, None)
            if pause_s is None:
                raise BackupError(
                    "This machine is too busy, or much slower than the one that made the back-up, to open it; end "
                    "other programs and try again, or open it on another machine. The back-up is not at fault."
                ) from error
            time.sleep(pause_s)


def _unpack(members: tarfile.TarFile, member: tarfile.TarInfo, folder: Path) -> None:
    if not member.isreg() or not _MEMBER.fullmatch(member.name):
        raise BackupError("The back-up holds something that no back-up of clinchbook holds; nothing was restored.")
    target = folder / member.name
    make_private_folder(target.parent)
    packed = members.extractfile(member)
    if packed is None:
        raise tarfile.ReadError("a member without content")
    handle = os.open(target, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
    with packed, os.fdopen(handle, "wb") as file:
        while block := packed.read(_BLOCK):
            file.write(block)
        file.flush()
        sync_file(file.fileno())


def _trouble(error: Exception) -> str | None:
    """What the system complained of; the age library hands it on as text."""
    found = re.search(r"\[Errno \d+\] (.+)", str(error))
    return found[1] if found else None


class _Digest(io.RawIOBase):
    """Takes bytes and keeps only their SHA-256."""

    def __init__(self) -> None:
        self.digest = hashlib.sha256()

    def writable(self) -> bool:
        """It is only written to."""
        return True

    def write(self, data: Any) -> int:
        """Add bytes to the digest."""
        self.digest.update(data)
        return len(data)


class _Stream(io.RawIOBase):
    """A tar of files as it is read, portion by portion, with the digest of all that was read."""

    def __init__(self, members: list[tuple[str, Path]]) -> None:
        self.digest = hashlib.sha256()
        self._portions = _tar(members)
        self._left = memoryview(b"")

    def readable(self) -> bool:
        """It is only read."""
        return True

    def readinto(self, buffer: Any) -> int:
        """Fill ``buffer`` as far as there are bytes; 0 at the end."""
        if not self._left:
            self._left = memoryview(next(self._portions, b""))
        taken = self._left[: len(buffer)]
        buffer[: len(taken)] = taken
        self._left = self._left[len(taken) :]
        self.digest.update(taken)
        return len(taken)


def _tar(members: list[tuple[str, Path]]) -> Iterator[bytes]:
    for name, path in members:
        with path.open("rb") as file:
            info = tarfile.TarInfo(name)
            info.size, info.mode = os.fstat(file.fileno()).st_size, 0o600
            yield info.tobuf(tarfile.PAX_FORMAT)
            left = info.size
            while left:
                block = file.read(min(_BLOCK, left))
                if not block:
                    raise OSError(errno.EIO, f"{path.name} became shorter while it was being saved")
                left -= len(block)
                yield block
            if info.size % tarfile.BLOCKSIZE:  # an empty portion would end the stream
                yield b"\0" * (-info.size % tarfile.BLOCKSIZE)
    yield b"\0" * (2 * tarfile.BLOCKSIZE)
