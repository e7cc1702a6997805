"""The server as it is started: where it listens, what it prints, what it refuses, and how it ends."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from pipeline.errors import SettingsError
from pipeline.page.server import lan_address, qr_lines
from tests.page.browsing import ROOT, served

if TYPE_CHECKING:
    from collections.abc import Sequence


def review_page(*arguments: str | Path) -> subprocess.CompletedProcess[str]:
    """Run ``clinchbook review`` to its end, in a process of its own, because sockets are blocked in this one."""
    command: Sequence[str] = [sys.executable, "-m", "pipeline.cli", "review", *map(str, arguments)]
    return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, timeout=60, check=False)


def listening_at(port: int) -> set[str] | None:
    """The addresses, in hexadecimal, at which this machine listens at a port; None where Linux does not tell."""
    table = Path("/proc/net/tcp")
    if not table.exists():
        return None
    rows = [line.split() for line in table.read_text(encoding="ascii").splitlines()[1:]]
    return {row[1].partition(":")[0] for row in rows if row[3] == "0A" and int(row[1].partition(":")[2], 16) == port}


def test_it_prints_its_address_listens_at_loopback_and_ends_by_ctrl_c(book: Path) -> None:
    with served(book) as address:
        origin, _, token = address.partition("/enter?token=")
        port = origin.removeprefix("http://127.0.0.1:")
        assert int(port) > 0
        assert len(token) == 43
        assert listening_at(int(port)) in ({"0100007F"}, None)
        busy = review_page("--page", "--port", port, "--store", book)
    assert (busy.returncode, busy.stdout) == (19, "")
    assert busy.stderr == f"Port {port} is taken by another program; name another one with --port.\n"


@pytest.mark.parametrize(
    ("arguments", "code", "sentence"),
    [
        (("--port", "0"), 19, "--port, --lan and --address belong to --page."),
        (("--page", "--json"), 19, "--json and --no-input belong to the review without --page."),
        (("--page", "--no-input"), 19, "--json and --no-input belong to the review without --page."),
        (("--lan",), 19, "--port, --lan and --address belong to --page."),
        (("--page", "--address", "192.168.1.20"), 19, "--address belongs to --lan."),
        (("--page", "--lan", "--address", "192.168.255.254"), 19, "That address is not one of this machine."),
        (("--page", "--lan", "--address", "8.8.8.8"), 19, "8.8.8.8 is no address of a private network;"),
    ],
    ids=str,
)
def test_what_cannot_be_served_is_one_sentence(
    arguments: tuple[str, ...], code: int, sentence: str, book: Path
) -> None:
    ended = review_page(*arguments, "--store", book)
    assert (ended.returncode, ended.stdout, ended.stderr.count("\n")) == (code, "", 1)
    assert sentence in ended.stderr


BOTH = """
import sys, threading, urllib.request
from pathlib import Path
from pipeline.page.server import make_server

server = make_server(Path(sys.argv[1]), None, 0, "127.0.0.2")
threading.Thread(target=server.run, daemon=True).start()
for address in (server.addresses.here, server.addresses.lan):
    print(address.partition("/enter")[0].rpartition(":")[0], urllib.request.urlopen(address).status)
foreign = urllib.request.Request(server.addresses.lan, headers={"Host": "book.example"})
try:
    urllib.request.urlopen(foreign)
except urllib.error.HTTPError as refused:
    print(refused.code, refused.headers["Content-Security-Policy"][:18])
server.close()
"""


@pytest.mark.skipif(sys.platform != "linux", reason="only Linux has a second loopback address without being asked")
def test_with_lan_it_listens_at_both_addresses_and_at_no_other(book: Path) -> None:
    command = [sys.executable, "-c", BOTH, str(book)]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, timeout=60, check=False)
    assert (done.stdout.splitlines(), done.stderr) == (
        ["http://127.0.0.1 200", "http://127.0.0.2 200", "421 default-src 'none'"],
        "",
    )


def test_a_missing_store_is_told_before_anything_listens(tmp_path: Path) -> None:
    ended = review_page("--page", "--port", "0", "--store", tmp_path / "none")
    assert (ended.returncode, ended.stdout) == (3, "")
    assert "There is no store in" in ended.stderr


@pytest.mark.parametrize("address", ["127.0.0.1", "0.0.0.0", "203.0.113.7", "stable.example", "fe80::1", "999.1.1.1"])
def test_only_a_private_address_is_opened(address: str) -> None:
    with pytest.raises(SettingsError):
        lan_address(address)


def test_a_private_address_is_taken_as_named() -> None:
    assert lan_address("192.168.1.20") == "192.168.1.20"


def test_the_code_is_a_square_of_half_blocks() -> None:
    lines: list[str] = []
    qr_lines("http://192.168.1.20:8437/enter?token=abc", lines.append)
    drawn = [line for line in lines if line.strip()]
    assert len(drawn) >= 13
    assert {len(line) for line in drawn} != {0}
