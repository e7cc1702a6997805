"""The encrypted back-up: only its passphrase opens it, and damage anywhere is a sentence."""

from __future__ import annotations

import io
import subprocess
import tarfile
import zipfile
from pathlib import Path
from shutil import which
from typing import TYPE_CHECKING

import pyrage
import pytest

from pipeline.errors import BackupError, FileMissingError, PassphraseError
from pipeline.keeping import Store, archive
from pipeline.keeping.own_words import add_word
from pipeline.keeping.restoring import restore
from tests.keeping.saving import everything

if TYPE_CHECKING:
    from pipeline.record import Visit
    from tests.keeping.conftest import Yard

PASSPHRASE = "the grey cob eats hats ½"
SEALED = b"sealed:"


@pytest.fixture
def quick_seal(monkeypatch: pytest.MonkeyPatch) -> None:
    """Seal the key without the seconds that make a passphrase hard to guess; the rest is as it is."""

    def unseal(sealed: bytes, passphrase: str) -> bytes:
        head, key = sealed.split(b"|")
        if head != SEALED + passphrase.encode():
            raise pyrage.DecryptError
        return key

    class Quick:
        """In place of age's passphrases."""

        encrypt = staticmethod(lambda key, passphrase: SEALED + passphrase.encode() + b"|" + key)
        decrypt = staticmethod(unseal)

    monkeypatch.setattr(pyrage, "passphrase", Quick)


@pytest.fixture
def saved(quick_seal: None, yard: Yard, store: Store, trimmed: Visit, tmp_path: Path) -> Path:
    """An encrypted back-up of two memos and an own word."""
    yard.keep(store, trimmed, text="Bramble, dreadful thrush.")
    yard.keep(store, trimmed)
    add_word(yard.folder, "findings", "thrush", "porridge frog")
    path = tmp_path / "book.zip"
    done = store.archive(path, PASSPHRASE)
    assert (done.path, done.memos, done.copied, done.problems) == (path, 2, 2, ())
    return path


def opened(source: Path, folder: Path, passphrase: str = PASSPHRASE) -> tuple[str, ...]:
    """Restore an encrypted back-up; returns what it lacked."""
    return restore(source, folder, passphrase=lambda: passphrase).problems


def test_it_holds_everything_and_shows_nothing(yard: Yard, saved: Path, tmp_path: Path) -> None:
    data = saved.read_bytes().lower()
    for secret in (b"bramble", b"dreadful", b"sound number", b"sqlite", b"stinky", b".m4a"):
        assert secret not in data
    assert opened(saved, tmp_path / "new") == ()
    assert everything(tmp_path / "new") == everything(yard.folder)
    assert sorted(path.name for path in (tmp_path / "new").iterdir()) == ["clinchbook.db", "originals", "words"]


def test_the_real_seal_opens_with_its_passphrase_alone(
    yard: Yard, store: Store, trimmed: Visit, tmp_path: Path
) -> None:
    yard.keep(store, trimmed)
    path = tmp_path / "book.zip"
    store.archive(path, PASSPHRASE)
    assert opened(path, tmp_path / "new") == ()
    assert everything(tmp_path / "new") == everything(yard.folder)
    with pytest.raises(PassphraseError, match="does not open this back-up"):
        opened(path, tmp_path / "other", "the grey cob eats hats")
    assert not (tmp_path / "other").exists()


@pytest.mark.skipif(which("age") is None, reason="the program age is not on this machine")
def test_the_parts_open_with_the_age_program_too(saved: Path, tmp_path: Path) -> None:
    with zipfile.ZipFile(saved) as outer:
        (tmp_path / "key").write_bytes(outer.read("key.age").split(b"|")[1])
        (tmp_path / "store.tar.age").write_bytes(outer.read("store.tar.age"))
    command = ["age", "--decrypt", "--identity", str(tmp_path / "key"), str(tmp_path / "store.tar.age")]
    done = subprocess.run(command, capture_output=True, check=True, timeout=60)
    with tarfile.open(fileobj=io.BytesIO(done.stdout)) as members:
        assert [name.split("/")[0] for name in members.getnames()] == [
            "clinchbook.db", "words", "originals", "originals",
        ]  # fmt: skip


class TestAMachineThatIsBusy:
    """The age library measures the machine, and refuses for now what it opens when there is less to do."""

    @staticmethod
    def refusing(monkeypatch: pytest.MonkeyPatch, times: int) -> list[float]:
        """Let the passphrase be refused so many times; returns the pauses that were made."""
        decrypt, paused = pyrage.passphrase.decrypt, list[float]()

        class Busy:
            """Has too much to do at first."""

            left = times

            @classmethod
            def decrypt(cls, sealed: bytes, passphrase: str) -> bytes:
                """Refuse, or open."""
                if cls.left:
                    cls.left -= 1
                    raise pyrage.DecryptError("Excessive work parameter for passphrase.")
                opened: bytes = decrypt(sealed, passphrase)
                return opened

        monkeypatch.setattr(pyrage, "passphrase", Busy)
        monkeypatch.setattr("pipeline.keeping.archive.time.sleep", paused.append)
        return paused

    def test_opens_a_little_later(self, saved: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        paused = self.refusing(monkeypatch, 3)
        assert opened(saved, tmp_path / "new") == ()
        assert paused == [1.0, 5.0, 15.0]

    def test_never_calls_the_passphrase_wrong(
        self, saved: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        self.refusing(monkeypatch, 4)
        with pytest.raises(BackupError, match=r"^This machine is too busy, .* The back-up is not at fault\.$"):
            opened(saved, tmp_path / "new")
        assert not (tmp_path / "new").exists()


def test_damage_anywhere_is_found(saved: Path, tmp_path: Path) -> None:
    data = saved.read_bytes()
    for part in range(40):
        where = part * len(data) // 40
        damaged = bytearray(data)
        damaged[where] ^= 0x55
        (tmp_path / "damaged.zip").write_bytes(bytes(damaged))
        new = tmp_path / f"new{part}"
        if sentence := sentence_of(tmp_path / "damaged.zip", new):
            assert sentence.endswith(".")
            assert not new.exists()
        else:  # the byte was in the text for people or in the zip's own notes
            assert everything(new) == everything(tmp_path / "book")


def sentence_of(source: Path, folder: Path) -> str | None:
    """Restore a back-up; returns what was said of it when it could not be."""
    try:
        opened(source, folder)
    except BackupError as error:
        return str(error)
    return None


@pytest.mark.parametrize("length", [0, 10, 0.3, 0.9, 0.999])
def test_a_file_cut_short_is_refused(saved: Path, tmp_path: Path, length: float) -> None:
    data = saved.read_bytes()
    saved.write_bytes(data[: int(length if length >= 1 else length * len(data))])
    with pytest.raises(BackupError, match=r"book\.zip is no encrypted back-up"):
        opened(saved, tmp_path / "new")
    assert not (tmp_path / "new").exists()


def test_any_other_file_is_refused(quick_seal: None, tmp_path: Path) -> None:
    letter = tmp_path / "letter.txt"
    letter.write_text("Dear farrier", encoding="utf-8")
    with pytest.raises(BackupError, match="is no encrypted back-up of clinchbook"):
        opened(letter, tmp_path / "new")


@pytest.mark.parametrize(
    "name", ["../outside.csv", "/etc/passwd", "originals/../../x", "words/../x.csv", "clinchbook.db-journal", "link"]
)
def test_a_back_up_that_reaches_outside_is_refused(quick_seal: None, tmp_path: Path, name: str) -> None:
    packed = io.BytesIO()
    with tarfile.open(fileobj=packed, mode="w") as members:
        info = tarfile.TarInfo("clinchbook.db" if name == "link" else name)
        if name == "link":
            info.type, info.linkname = tarfile.SYMTYPE, "/etc/passwd"
        members.addfile(info)
    key = pyrage.x25519.Identity.generate()
    path = tmp_path / "hostile.zip"
    with zipfile.ZipFile(path, "w") as outer:
        outer.writestr("key.age", pyrage.passphrase.encrypt(str(key).encode(), PASSPHRASE))
        outer.writestr("store.tar.age", pyrage.encrypt(packed.getvalue(), [key.to_public()]))
    with pytest.raises(BackupError, match="nothing was restored"):
        opened(path, tmp_path / "deep" / "new")
    assert sorted(path.name for path in tmp_path.iterdir()) == ["deep", "hostile.zip"]
    assert list((tmp_path / "deep").iterdir()) == []


def test_a_file_that_is_there_is_not_overwritten(store: Store, tmp_path: Path) -> None:
    path = tmp_path / "book.zip"
    path.write_bytes(b"older")
    with pytest.raises(BackupError, match=r"There is a .* already"):
        store.archive(path, PASSPHRASE)
    assert path.read_bytes() == b"older"


def test_a_short_passphrase_and_a_missing_folder_are_refused(store: Store, tmp_path: Path) -> None:
    with pytest.raises(PassphraseError, match="at least 8 characters"):
        store.archive(tmp_path / "book.zip", "seven77")
    with pytest.raises(FileMissingError, match="There is no folder"):
        store.archive(tmp_path / "none" / "book.zip", PASSPHRASE)
    assert sorted(path.name for path in tmp_path.iterdir()) == ["book", "memos"]


def test_what_was_not_written_rightly_is_not_kept(
    saved: Path, store: Store, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def losing(source: Path, passphrase: str, target: io.RawIOBase) -> None:
        target.write(b"something else")

    monkeypatch.setattr(archive, "_decrypt", losing)
    with pytest.raises(BackupError, match="is not what was written"):
        store.archive(tmp_path / "second.zip", PASSPHRASE)
    assert not (tmp_path / "second.zip").exists()


def test_a_full_disk_is_a_sentence(quick_seal: None, store: Store, tmp_path: Path) -> None:
    if not Path("/dev/full").exists():
        pytest.skip("this system has no disk that is always full")
    with pytest.raises(BackupError, match="cannot be written: No space left on device"):
        archive.write_archive(Path("/dev/full"), [("clinchbook.db", store.folder / "clinchbook.db")] * 20, PASSPHRASE)
