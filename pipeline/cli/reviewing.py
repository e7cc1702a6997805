"""``clinchbook review``: what is doubtful, one question after the other, by single keys."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Annotated

import typer

from pipeline.cli.options import JsonOption, StoreOption
from pipeline.errors import SettingsError

if TYPE_CHECKING:
    from pipeline.using.review import Review


def review(
    store: StoreOption = None,
    as_json: JsonOption = False,
    no_input: Annotated[
        bool, typer.Option("--no-input", help="Only list the questions, never wait for a key.")
    ] = False,
    who: Annotated[
        str | None, typer.Option("--who", metavar="NAME", help="Whose answers these are. Default: your login name.")
    ] = None,
    page: Annotated[bool, typer.Option("--page", help="As a web page on this machine, until Ctrl-C.")] = False,
    port: Annotated[
        int | None,
        typer.Option(metavar="N", min=0, max=65535, help="The page's port; 0 is any free one. Default: 8437."),
    ] = None,
    lan: Annotated[
        bool, typer.Option("--lan", help="Open the page to the phones of this local network too, by a QR code.")
    ] = False,
    address: Annotated[
        str | None, typer.Option(metavar="IP", help="This machine's address for --lan, when it has several.")
    ] = None,
) -> None:
    """Look at what is doubtful, the most harmful first.

    One question a field, with the words around it and their sound. A key answers it; every answer is kept at once,
    and u takes the last one back. Without a keyboard, the questions are listed.

    With --page the same review runs in a browser: the day, each visit with its drawn feet, and a search besides.

    Example: clinchbook review
    """
    from pipeline.cli.endings import say
    from pipeline.cli.output import counted
    from pipeline.keeping import Store, store_folder
    from pipeline.keeping.own_words import vocabulary_with_own
    from pipeline.using.review import Review

    folder = store_folder(store)
    if page:
        from pipeline.cli.serving import serve_page

        if as_json or no_input:
            raise SettingsError("--json and --no-input belong to the review without --page.")
        serve_page(folder, who, port, lan, address)
        return
    if port is not None or lan or address:
        raise SettingsError("--port, --lan and --address belong to --page.")
    with Store.open(folder, create=False) as kept:
        asking = Review(kept, vocabulary_with_own(folder), who)
        if as_json or no_input or not sys.stdin.isatty():
            number = _list(asking, as_json)
            say(f"{counted(number, 'question')} to answer." if number else "Nothing is doubtful. All done.")
            return
        _ask(asking)


def _list(asking: Review, as_json: bool) -> int:
    from pipeline.cli.output import print_json
    from pipeline.cli.review_screen import list_line, question_json

    number = 0
    for item in asking.each():
        number += 1
        if as_json:
            print_json(question_json(asking.show(item)))
        else:
            typer.echo(list_line(item))
    return number


def _ask(asking: Review) -> None:
    from pipeline.cli.playing import Player
    from pipeline.cli.review_keys import KeyReview, Terminal
    from pipeline.cli.review_screen import fitted

    def key() -> str:
        try:
            pressed: str = typer.getchar()
        except EOFError:  # Ctrl-D, or the line to the terminal is gone
            return "q"
        return pressed

    def line(asked: str) -> str:
        try:
            typed: str = typer.prompt(asked, default="", show_default=False)
        except typer.Abort:  # Ctrl-C: he thought better of it
            typer.echo()
            return ""
        return typed

    with Player() as player:
        KeyReview(asking, Terminal(key, line, lambda text: typer.echo(fitted(text))), player).run()
