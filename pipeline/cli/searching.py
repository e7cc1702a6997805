"""What ``clinchbook search`` prints."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

import typer

from pipeline.cli.endings import say
from pipeline.cli.output import print_json

if TYPE_CHECKING:
    from pipeline.keeping.looking import Looking
    from pipeline.using.search import Asked
    from pipeline.vocabulary import Vocabulary

Form = Literal["json", "csv", "text"]


def print_found(store: Looking, asked: Asked, vocabulary: Vocabulary, form: Form) -> None:
    """The finds on stdout; that there is nothing, or more, on stderr."""
    from pipeline.using.found import found_csv, found_json, found_lines
    from pipeline.using.search import meant_perhaps, search

    found = search(store, asked, vocabulary)
    if form == "json":
        print_json(found_json(found))
        return
    if form == "csv":
        typer.echo(found_csv(found), nl=False)
    elif found.facts or found.passages:
        typer.echo("\n".join(found_lines(found)))
    if not found.facts and not found.passages:
        say(f"Nothing found.{meant_perhaps(asked.words, vocabulary)}")
    elif found.more:
        say(f"There is more; these are the first {asked.limit}.")


def print_counts(store: Looking, asked: Asked, by: str, vocabulary: Vocabulary, form: Form) -> None:
    """The counts on stdout."""
    from pipeline.using.found import count_csv, count_json, count_lines
    from pipeline.using.search import count, meant_perhaps

    counts = count(store, asked, by, vocabulary)
    if form == "json":
        print_json(count_json(counts, by))
        return
    if form == "csv":
        typer.echo(count_csv(counts, by), nl=False)
    elif counts:
        typer.echo("\n".join(count_lines(counts, by)))
    if not counts:
        say(f"Nothing found.{meant_perhaps(asked.words, vocabulary)}")
