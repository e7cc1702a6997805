"""The page's server: which addresses it listens at, what it prints, and how it ends.

The only part of the project that opens a port. It listens on this machine alone; with ``lan`` also at one private
address of this machine, because he asked for it.
"""

from __future__ import annotations

import errno
import ipaddress
import logging
import socket
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from pipeline.errors import SettingsError
from pipeline.keeping import Store
from pipeline.keeping.own_words import vocabulary_with_own
from pipeline.page.app import make_app
from pipeline.page.desk import Desk
from pipeline.page.gate import Gate

LOOPBACK = "127.0.0.1"
# An address of the documentation block (RFC 5737), which no network carries.
_NOWHERE = ("192.0.2.1", 9)
# Private and link-local addresses (RFC 1918, RFC 3927).
_PRIVATE = [
    ipaddress.IPv4Network(block) for block in ("10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "169.254.0.0/16")
]
_THREADS = 4


@dataclass(frozen=True)
class Addresses:
    """Where the page is served: for this machine, and for the local network if he wants it; the token is in both."""

    here: str
    lan: str | None = None


class PageServer:
    """A server that is bound and ready; ``run`` answers until it is interrupted, and ends without a traceback."""

    def __init__(self, server: Any, addresses: Addresses) -> None:
        self._server = server
        self.addresses = addresses

    def run(self) -> None:
        """Answer requests until Ctrl-C; every answer that was given is kept by then."""
        self._server.run()

    def close(self) -> None:
        """Let go of the port."""
        self._server.close()


def make_server(folder: Path, who: str | None, port: int, lan: str | None) -> PageServer:
    """Bind the page of a store; ``port`` 0 is any that is free, ``lan`` an address of this machine to listen at too.

    Raises SettingsError with one sentence for a port that is taken and an address that is not this machine's own, and
    what opening the store raises.
    """
    with Store.open(folder, create=False):
        pass  # a missing or foreign store is told before anything listens
    gate = Gate()
    desk = Desk(folder, vocabulary_with_own(folder), gate, who)
    server = _bound(make_app(desk), [LOOPBACK, *([lan] if lan else [])], port)
    bound = _ports(server)
    names = [f"{LOOPBACK}:{bound[LOOPBACK]}", f"localhost:{bound[LOOPBACK]}"]
    if lan:
        names.append(f"{lan}:{bound[lan]}")
    gate.hosts = frozenset(names)
    token = gate.token
    here = f"http://{LOOPBACK}:{bound[LOOPBACK]}/enter?token={token}"
    return PageServer(server, Addresses(here, f"http://{lan}:{bound[lan]}/enter?token={token}" if lan else None))


def lan_address(named: str | None) -> str:
    """The private address of this machine in its local network: the named one, or that of its usual way out.

    Nothing is sent to find it. Raises SettingsError when there is none, or when the named one is open to the internet.
    """
    found = named or _usual_address()
    try:
        address = ipaddress.IPv4Address(found)
    except ValueError as error:
        raise SettingsError(f"{found!r} is no address; write it as 192.168.1.20.") from error
    if not any(address in block for block in _PRIVATE):
        raise SettingsError(f"{found} is no address of a private network; the page is not opened to the internet.")
    return str(address)


def qr_lines(address: str, tell: Callable[[str], None]) -> None:
    """The address as a QR code of half blocks, line by line."""
    import io

    import segno

    out = io.StringIO()
    segno.make(address, error="m", micro=False).terminal(out=out, compact=True)
    for line in out.getvalue().splitlines():
        tell(line)


def _usual_address() -> str:
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asking:
        try:
            asking.connect(_NOWHERE)  # a datagram socket only looks up its route here
            return str(asking.getsockname()[0])
        except OSError as error:
            raise SettingsError("This machine is in no network; name its address with --address.") from error


def _bound(app: Any, addresses: list[str], port: int) -> Any:
    import waitress

    logging.getLogger("waitress").setLevel(logging.ERROR)
    try:
        return waitress.create_server(
            app, listen=" ".join(f"{address}:{port}" for address in addresses), threads=_THREADS, ident=None
        )
    except OSError as error:
        raise SettingsError(_refusal(error, port)) from error


def _refusal(error: OSError, port: int) -> str:
    if error.errno == errno.EADDRINUSE:
        return f"Port {port} is taken by another program; name another one with --port."
    if error.errno in (errno.EACCES, errno.EPERM):
        return f"Port {port} may not be opened by this user; name one above 1023 with --port."
    if error.errno == errno.EADDRNOTAVAIL:
        return "That address is not one of this machine."
    return f"The page cannot be opened at port {port}: {error.strerror or error}."


def _ports(server: Any) -> dict[str, int]:
    listening = getattr(server, "effective_listen", None) or [(server.effective_host, server.effective_port)]
    return {host: int(port) for host, port in listening}
