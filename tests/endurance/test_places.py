"""Where a store lies: network shares are named, and a store that is taken away while in use is written to no more."""

from __future__ import annotations

import logging
from collections import namedtuple
from pathlib import Path

import pytest

from pipeline.errors import StoreError
from pipeline.keeping import Store
from pipeline.keeping.shares import network_share, share_warning
from tests.endurance.yard import HORSES, keep, spoken, with_roster

Mount = namedtuple("Mount", ("device", "mountpoint", "fstype", "opts"))


@pytest.fixture
def mounts(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> list[Mount]:
    """A mount table that can be written: a disk at the root and what a test adds."""
    table = [Mount("/dev/sda1", "/", "ext4", "rw")]
    monkeypatch.setattr("psutil.disk_partitions", lambda all: table)
    return table


@pytest.mark.parametrize("kind", ["nfs", "nfs4", "cifs", "smb3", "9p", "fuse.sshfs", "fuse.rclone", "NFS", "smbfs"])
def test_a_network_share_is_told_by_its_kind(tmp_path: Path, mounts: list[Mount], kind: str) -> None:
    mounts.append(Mount("server:/barn", str(tmp_path / "share"), kind, "rw"))
    assert network_share(tmp_path / "share" / "not made yet" / "book") == kind
    assert network_share(tmp_path / "share") == kind
    assert network_share(tmp_path / "shared") is None


@pytest.mark.parametrize("kind", ["ext4", "btrfs", "apfs", "tmpfs", "fuseblk", "fuse.ntfs-3g", "vfat", "overlay"])
def test_a_disk_of_this_machine_is_no_share(tmp_path: Path, mounts: list[Mount], kind: str) -> None:
    mounts.append(Mount("/dev/sdb1", str(tmp_path), kind, "rw"))
    assert network_share(tmp_path) is None


def test_the_nearest_and_latest_mount_decides(tmp_path: Path, mounts: list[Mount]) -> None:
    mounts.append(Mount("server:/barn", str(tmp_path), "nfs4", "rw"))
    mounts.append(Mount("/dev/sdb1", str(tmp_path / "stick"), "vfat", "rw"))
    assert network_share(tmp_path / "stick" / "book") is None
    mounts.append(Mount("//server/barn", str(tmp_path / "stick"), "cifs", "rw"))
    assert network_share(tmp_path / "stick" / "book") == "cifs"


def test_a_windows_drive_that_is_remote_is_a_share(tmp_path: Path, mounts: list[Mount]) -> None:
    mounts.append(Mount("Z:\\", str(tmp_path), "NTFS", "rw,remote"))
    assert network_share(tmp_path) == "NTFS"


def test_a_link_into_a_share_is_followed(tmp_path: Path, mounts: list[Mount]) -> None:
    (tmp_path / "share").mkdir()
    (tmp_path / "link").symlink_to(tmp_path / "share")
    mounts.append(Mount("server:/barn", str((tmp_path / "share").resolve()), "nfs", "rw"))
    assert network_share(tmp_path / "link" / "book") == "nfs"


def test_opening_a_store_on_a_share_says_so_once(
    tmp_path: Path, mounts: list[Mount], caplog: pytest.LogCaptureFixture
) -> None:
    mounts.append(Mount("server:/barn", str(tmp_path), "nfs4", "rw"))
    with caplog.at_level(logging.WARNING, "clinchbook"):
        with_roster(tmp_path / "book")
    (said,) = caplog.messages
    assert said == share_warning(tmp_path / "book")
    assert "lies on a network share (nfs4)" in said
    caplog.clear()
    mounts.pop()
    with caplog.at_level(logging.WARNING, "clinchbook"):
        Store.open(tmp_path / "book").close()
    assert caplog.messages == []


def test_a_store_that_was_moved_away_is_not_written_to(tmp_path: Path) -> None:
    """Else a memo would be acknowledged and lie in a folder that nobody looks into."""
    book, memo = tmp_path / "book", spoken(tmp_path, 1)
    with_roster(book)
    with Store.open(book) as store:
        book.rename(tmp_path / "set aside")
        with pytest.raises(StoreError, match="was moved, replaced or taken away"):
            keep(store, memo)
        with pytest.raises(StoreError, match="was moved, replaced or taken away"):
            store.add_horses(HORSES)
        assert not book.exists()
        with_roster(book)
        with pytest.raises(StoreError, match="was moved, replaced or taken away"):
            keep(store, memo)
    for folder in (book, tmp_path / "set aside"):
        with Store.open(folder) as store:
            assert (store.memos(), store.problems(deep=True)) == ([], [])
            assert list(folder.rglob("*.m4a")) == []
