"""``clinchbook review --page``: the page's address on the screen, and the server until Ctrl-C."""

from __future__ import annotations

import contextlib
from pathlib import Path

import typer

from pipeline.errors import SettingsError

PORT = 8437
_WARNING = (
    "Everyone in this local network can reach this machine now, and what goes through the air is not encrypted.\n"
    "Do this in your own network only, never in a café's or a stable's. The code lets in one device, once."
)


def serve_page(folder: Path, who: str | None, port: int | None, lan: bool, address: str | None) -> None:
    """Print the page's address and serve it until Ctrl-C. Raises SettingsError for what cannot be served."""
    from pipeline.cli.endings import say
    from pipeline.page.server import lan_address, make_server, qr_lines

    if address and not lan:
        raise SettingsError("--address belongs to --lan.")
    server = make_server(folder, who, PORT if port is None else port, lan_address(address) if lan else None)
    try:
        if server.addresses.lan:
            say(_WARNING)
            qr_lines(server.addresses.lan, typer.echo)
            typer.echo(server.addresses.lan)
        typer.echo(server.addresses.here)
        say("Open that address in a browser; it works once. Stop with Ctrl-C.")
        with contextlib.suppress(KeyboardInterrupt):
            server.run()
    finally:
        server.close()
    say("Stopped. Every answer is kept.")
