"""``clinchbook show`` and ``search``: what is kept, looked at."""

from __future__ import annotations

from typing import Annotated

import typer

from pipeline.cli.options import JsonOption, StoreOption, read_day

Texts = list[str] | None
PlaceOption = Annotated[
    str | None, typer.Option(metavar="TEXT", help="Where the horse stands, when several have its name.")
]


def show(
    visit: Annotated[int, typer.Argument(metavar="VISIT", help="The visit's number.")],
    store: StoreOption = None,
    as_json: JsonOption = False,
) -> None:
    """Show one visit, foot by foot.

    What was found and done, the plan, and what wants a look.

    Example: clinchbook show 12
    """
    from pipeline.cli.output import console, print_json
    from pipeline.keeping import Store, store_folder
    from pipeline.using.show import visit_json, visit_text, visit_view

    with Store.open(store_folder(store), create=False) as kept:
        found = kept.visit(visit)
    if as_json:
        print_json(visit_json(found))
        return
    out = console()
    if out.is_terminal:
        out.print(visit_view(found))
    else:
        typer.echo(visit_text(found), nl=False)


def search(
    words: Annotated[
        Texts, typer.Argument(metavar="[WORDS]...", help="A finding, or any words that were said.")
    ] = None,
    finding: Annotated[Texts, typer.Option(metavar="NAME", help="A finding in any of its names.")] = None,
    slot: Annotated[Texts, typer.Option(metavar="NAME", help="A kind of fact, such as shoe_size.")] = None,
    value: Annotated[Texts, typer.Option(metavar="VALUE", help="What the fact says, such as egg_bar.")] = None,
    foot: Annotated[Texts, typer.Option(metavar="FOOT", help="LF, RF, LH, RH, or horse for the whole.")] = None,
    zone: Annotated[Texts, typer.Option(metavar="ZONE", help="Where on the foot, such as sulcus.")] = None,
    status: Annotated[
        Texts, typer.Option(metavar="STATUS", help="present and suspected unless given; also absent, history ...")
    ] = None,
    horse: Annotated[str | None, typer.Option(metavar="NAME", help="Only this horse.")] = None,
    owner: Annotated[str | None, typer.Option(metavar="TEXT", help="Only horses of this owner.")] = None,
    place: Annotated[str | None, typer.Option(metavar="TEXT", help="Only horses at this place.")] = None,
    since: Annotated[str | None, typer.Option(metavar="YYYY-MM-DD", help="From this day on.")] = None,
    until: Annotated[str | None, typer.Option(metavar="YYYY-MM-DD", help="Up to this day.")] = None,
    flagged: Annotated[
        bool | None, typer.Option("--flagged/--sure", help="Only what wants a look, or only what does not.")
    ] = None,
    limit: Annotated[int, typer.Option(metavar="N", min=1, help="At most this many facts.")] = 1000,
    store: StoreOption = None,
    as_json: JsonOption = False,
) -> None:
    """Search all visits.

    What was said not to be there is listed only with --status absent.

    Example: clinchbook search seedy toe --foot LF --since 2026-01-01
    """
    from pipeline.cli.endings import say
    from pipeline.cli.output import print_json
    from pipeline.keeping import Store, store_folder
    from pipeline.keeping.own_words import vocabulary_with_own
    from pipeline.using.found import found_json, found_lines
    from pipeline.using.search import Asked
    from pipeline.using.search import search as search_store

    asked = Asked(
        words=" ".join(words or ()),
        findings=finding or (),
        slots=slot or (),
        values=value or (),
        feet=foot or (),
        zones=zone or (),
        statuses=status or (),
        horse=horse,
        owner=owner,
        place=place,
        since=read_day(since),
        until=read_day(until),
        flagged=flagged,
        limit=limit,
    )
    folder = store_folder(store)
    with Store.open(folder, create=False) as kept:
        found = search_store(kept, asked, vocabulary_with_own(folder))
    if as_json:
        print_json(found_json(found))
        return
    for line in found_lines(found):
        typer.echo(line)
    if not found.facts and not found.passages:
        say("Nothing found.")
    elif found.more:
        say(f"There is more; these are the first {limit}.")


def assign(
    visit: Annotated[int, typer.Argument(metavar="VISIT", help="The visit's number.")],
    horse: Annotated[str, typer.Argument(metavar="HORSE", help="The horse that it was.")],
    place: PlaceOption = None,
    store: StoreOption = None,
) -> None:
    """Say whose visit it was when the memo did not.

    Example: clinchbook assign 12 Bramble
    """
    from pipeline.keeping import Store, store_folder

    with Store.open(store_folder(store), create=False) as kept:
        whose = kept.horse(horse, place)
        kept.assign(visit, whose)
    typer.echo(f"Visit {visit} belongs to {whose.name} now.")
