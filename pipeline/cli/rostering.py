"""``clinchbook roster``: the horses that the farrier looks after."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from pipeline.cli.options import JsonOption, StoreOption

roster = typer.Typer(
    rich_markup_mode=None, no_args_is_help=True, help="The horses you look after.\n\nExample: clinchbook roster list"
)


@roster.command("import")
def import_file(
    file: Annotated[Path, typer.Argument(metavar="FILE.csv", help="Columns name, owner, place, also_called.")],
    store: StoreOption = None,
) -> None:
    """Take a list of horses from a CSV file.

    Horses known already by name and place are brought up to date. Several other names in
    also_called are separated by a semicolon; the columns ueln and microchip are checked, and
    further columns are kept as they are.

    Example: clinchbook roster import horses.csv
    """
    from pipeline.errors import RosterError
    from pipeline.keeping import Store, store_folder
    from pipeline.keeping.roster import read_roster

    horses = read_roster(file)
    if not horses:
        raise RosterError(f"{file.name} names its columns, but no horse.")
    with Store.open(store_folder(store)) as kept:
        added, updated = kept.add_horses(horses)
    typer.echo(f"{added} added, {updated} brought up to date.")


@roster.command("add")
def add(
    name: Annotated[str, typer.Argument(metavar="NAME", help="The horse's name as it is said.")],
    owner: Annotated[str | None, typer.Option(metavar="TEXT", help="Whose horse it is.")] = None,
    place: Annotated[str | None, typer.Option(metavar="TEXT", help="Where it stands.")] = None,
    also_called: Annotated[
        list[str] | None, typer.Option(metavar="NAME", help="Another name for it; may be given several times.")
    ] = None,
    ueln: Annotated[str | None, typer.Option(metavar="NUMBER", help="Its UELN, 15 characters.")] = None,
    microchip: Annotated[str | None, typer.Option(metavar="NUMBER", help="Its microchip, 15 digits.")] = None,
    store: StoreOption = None,
) -> None:
    """Add one horse.

    Example: clinchbook roster add Bramble --owner "A. Fern" --place "River barn" --also-called Bram
    """
    from pipeline.errors import RosterError
    from pipeline.keeping import Store, store_folder
    from pipeline.keeping.identity import IdentityError, with_identity
    from pipeline.record import RosterHorse

    if not name.strip():
        raise RosterError("A horse needs a name.")
    given = {"ueln": ueln, "microchip": microchip}
    try:
        numbers = with_identity({kind: number for kind, number in given.items() if number})
    except IdentityError as error:
        raise RosterError(f"{name.strip()}: {error}.") from error
    horse = RosterHorse(name=name.strip(), owner=owner, place=place, also_called=also_called or [], other=numbers)
    with Store.open(store_folder(store)) as kept:
        added, _ = kept.add_horses([horse])
    typer.echo(f"{horse.name} added." if added else f"{horse.name} was known already and is brought up to date.")


@roster.command("list")
def list_horses(store: StoreOption = None, as_json: JsonOption = False) -> None:
    """List the horses.

    Example: clinchbook roster list
    """
    from pipeline.cli.output import print_json
    from pipeline.keeping import Store, store_folder

    with Store.open(store_folder(store), create=False) as kept:
        horses = kept.roster()
    for horse in horses:
        if as_json:
            print_json(horse.model_dump(mode="json"))
        else:
            called = f" (also {', '.join(horse.also_called)})" if horse.also_called else ""
            typer.echo("  ".join(part for part in (f"{horse.name}{called}", horse.owner, horse.place) if part))
