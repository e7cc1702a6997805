"""Whether a folder lies on a network share, where a database is not safe from two programs at once."""

from __future__ import annotations

import os
from pathlib import Path

# Names of network file systems as Linux, macOS and WSL give them; common practice, no source.
_NETWORK = frozenset(
    (
        "9p", "afpfs", "afs", "ceph", "cifs", "coda", "davfs", "glusterfs", "lustre", "ncpfs", "nfs", "nfs3", "nfs4",
        "smb", "smb2", "smb3", "smbfs", "vboxsf", "virtiofs", "vmhgfs", "webdav",
    )
)  # fmt: skip
# The same behind FUSE, written fuse.NAME.
_FUSED = frozenset(
    (
        "ceph",
        "curlftpfs",
        "davfs",
        "davfs2",
        "glusterfs",
        "gvfsd-fuse",
        "rclone",
        "s3fs",
        "smbnetfs",
        "sshfs",
        "vmhgfs-fuse",
    )
)


def network_share(folder: Path) -> str | None:
    """The kind of network file system that ``folder``, or where it will be made, lies on; None for a disk of this
    machine, and where that cannot be told."""
    import psutil

    place = folder.absolute()
    if os.name == "nt" and str(place).startswith("\\\\"):
        return "a Windows share"
    try:
        place = place.resolve()
        mounts = [(Path(part.mountpoint), part.fstype, part.opts) for part in psutil.disk_partitions(all=True)]
    except (OSError, RuntimeError):
        return None
    above = [mount for mount in mounts if place.is_relative_to(mount[0])]
    if not above:
        return None
    # Of two at one place the later lies over the earlier.
    _, kind, options = max(reversed(above), key=lambda mount: len(mount[0].parts))
    return kind if _is_network(kind.lower()) or "remote" in options.split(",") else None


def share_warning(folder: Path) -> str | None:
    """One sentence for a store on a network share; None for any other.

    SQLite's authors warn of it: D. R. Hipp et al., How To Corrupt An SQLite Database File, section 2.1, and SQLite
    Over a Network, both on sqlite.org.
    """
    kind = network_share(folder)
    if kind is None:
        return None
    return (
        f"The store in {folder} lies on a network share ({kind}), where two programs that write at once, or a lost "
        "connection, can damage it; keep it on a disk of this machine and put only back-ups on the share."
    )


def _is_network(kind: str) -> bool:
    return kind in _NETWORK or (kind.startswith("fuse.") and kind.removeprefix("fuse.") in _FUSED)
