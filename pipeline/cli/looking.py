"""``clinchbook show`` and ``search``: what is kept, looked at.

The annotations here are no strings: compiling them took every command several milliseconds.
"""

from typing import Annotated

import typer

from pipeline.cli.options import CsvOption, JsonOption, StoreOption, one_form, read_first_day, read_last_day
from pipeline.cli.searching import print_counts, print_found

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
    where: Annotated[
        Texts, typer.Option(metavar="TEXT", help='A size or measure, such as "toe angle below 48".')
    ] = None,
    flagged: Annotated[
        bool | None, typer.Option("--flagged/--sure", help="Only what wants a look, or only what does not.")
    ] = None,
    count: Annotated[
        str | None, typer.Option(metavar="BY", help="Count instead: by month, year, horse, owner, place, foot ...")
    ] = None,
    limit: Annotated[int, typer.Option(metavar="N", min=1, help="At most this many facts.")] = 1000,
    store: StoreOption = None,
    as_json: JsonOption = False,
    as_csv: CsvOption = False,
) -> None:
    """Search all visits.

    What was said not to be there is listed only with --status absent. A day may be a month
    or a year. Several --where must hold of the same foot at the same visit.

    Example: clinchbook search thrush --foot RH --since 2026-01
    """
    from pipeline.keeping.location import store_folder
    from pipeline.keeping.looking import Looking
    from pipeline.keeping.own_words import late_vocabulary_with_own
    from pipeline.using.search import Asked

    asked = Asked(
        words=" ".join(words or ()),
        findings=finding or (),
        slots=slot or (),
        values=value or (),
        feet=foot or (),
        zones=zone or (),
        statuses=status or (),
        compared=where or (),
        horse=horse,
        owner=owner,
        place=place,
        since=read_first_day(since),
        until=read_last_day(until),
        flagged=flagged,
        limit=limit,
    )
    folder = store_folder(store)
    form = one_form(as_json, as_csv)
    with Looking.open(folder) as kept:
        vocabulary = late_vocabulary_with_own(folder)
        if count is None:
            print_found(kept, asked, vocabulary, form)
        else:
            print_counts(kept, asked, count, vocabulary, form)


def assign(
    visit: Annotated[int, typer.Argument(metavar="VISIT", help="The visit's number.")],
    horse: Annotated[str, typer.Argument(metavar="HORSE", help="The horse that it was.")],
    place: PlaceOption = None,
    store: StoreOption = None,
) -> None:
    """Say whose visit it was when the memo did not.

    Example: clinchbook assign 13 Pumpkin
    """
    from pipeline.keeping import Store, store_folder

    with Store.open(store_folder(store), create=False) as kept:
        whose = kept.horse(horse, place)
        kept.assign(visit, whose)
    typer.echo(f"Visit {visit} belongs to {whose.name} now.")
