"""A store on a network share is told of, by the kind of file system that its folder lies on."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

import pytest

from pipeline.keeping.shares import network_share, share_warning


class Mount(NamedTuple):
    """A file system as psutil tells it."""

    mountpoint: str
    fstype: str
    opts: str


@pytest.fixture
def mounted(monkeypatch: pytest.MonkeyPatch) -> Callable[..., None]:
    """Let these be the mounted file systems."""

    def mounting(*mounts: Mount) -> None:
        monkeypatch.setattr("psutil.disk_partitions", lambda all: list(mounts))

    return mounting


@pytest.mark.parametrize(
    ("kind", "options", "share"),
    [
        ("nfs4", "rw", "nfs4"),
        ("cifs", "rw", "cifs"),
        ("fuse.sshfs", "rw", "fuse.sshfs"),
        ("fuse.ext4", "rw", None),
        ("ext4", "rw,relatime", None),
        ("NTFS", "rw,remote", "NTFS"),
    ],
)
def test_the_kind_of_file_system_decides(
    kind: str, options: str, share: str | None, mounted: Callable[..., None], tmp_path: Path
) -> None:
    mounted(Mount("/", "ext4", "rw"), Mount(str(tmp_path), kind, options))
    assert network_share(tmp_path / "not there yet") == share
    assert (share_warning(tmp_path) is None) == (share is None)


def test_the_innermost_counts_and_of_two_at_one_place_the_later(mounted: Callable[..., None], tmp_path: Path) -> None:
    mounted(Mount(str(tmp_path), "nfs", "rw"), Mount("/", "cifs", "rw"), Mount(str(tmp_path), "ext4", "rw"))
    assert network_share(tmp_path) is None


def test_what_cannot_be_told_is_no_share(
    mounted: Callable[..., None], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    mounted()
    assert network_share(tmp_path) is None

    def refused(all: bool) -> list[Mount]:
        raise PermissionError("not for you")

    monkeypatch.setattr("psutil.disk_partitions", refused)
    assert network_share(tmp_path) is None


def test_the_warning_names_the_folder_and_the_kind(mounted: Callable[..., None], tmp_path: Path) -> None:
    mounted(Mount("/", "nfs", "rw"))
    told = share_warning(tmp_path)
    assert told is not None
    assert told.startswith(f"The store in {tmp_path} lies on a network share (nfs), ")
