"""``clinchbook forget``: a horse or a memo leaves the store for good."""

from __future__ import annotations

from typing import TYPE_CHECKING, Annotated

import typer

from pipeline.cli.options import StoreOption

if TYPE_CHECKING:
    from collections.abc import Sequence
    from pathlib import Path

    from pipeline.keeping import Store
    from pipeline.keeping.forgetting import Forgotten, Plan, SharedMemo

NOT_REMOVED = 1


def forget(
    horse: Annotated[
        str | None, typer.Option(metavar="NAME", help="Remove this horse and all that is its own.")
    ] = None,
    place: Annotated[str | None, typer.Option(metavar="TEXT", help="With --horse: where it stands.")] = None,
    memo: Annotated[int | None, typer.Option(metavar="N", help="Remove this memo with all its visits.")] = None,
    whole_memos: Annotated[
        bool, typer.Option("--whole-memos", help="With --horse: also the other horses of its memos.")
    ] = False,
    yes: Annotated[bool, typer.Option("--yes", help="Remove without asking.")] = False,
    finish: Annotated[bool, typer.Option("--finish", help="Only finish a removal that was interrupted.")] = False,
    store: StoreOption = None,
) -> None:
    """Remove a horse or a memo for good.

    Sound, words, facts and every trace in the store go; this cannot be undone. A memo that also
    holds another horse stays with its sound and words unless --whole-memos. A note of when and how
    much stays in the store, never of what.

    Example: clinchbook forget --horse Hester --place "Quince Farm"
    """
    _refuse_nonsense(horse, place, memo, whole_memos, finish)
    from pipeline.keeping import Store, store_folder
    from pipeline.keeping.forgetting import other_copies

    with Store.open(store_folder(store), create=False) as kept:
        finished = kept.finish_forgetting()
        if finished:
            typer.echo("The interrupted removal is finished.")
        elif finish:
            typer.echo("No removal was interrupted.")
        if finish:
            return
        plan = (
            kept.plan_forgetting_memo(memo)
            if memo is not None
            else kept.plan_forgetting_horse(horse or "", place, whole_memos)
        )
        if not yes and not _agreed(kept, plan):
            typer.echo("Nothing was removed.")
            raise typer.Exit(NOT_REMOVED)
        _tell(kept.forget(plan, whole_memos), other_copies(kept.folder))


def _refuse_nonsense(horse: str | None, place: str | None, memo: int | None, whole_memos: bool, finish: bool) -> None:
    if sum((horse is not None, memo is not None, finish)) != 1:
        raise typer.BadParameter("Say either --horse NAME, --memo N or --finish.")
    if horse is None and (place is not None or whole_memos):
        raise typer.BadParameter("--place and --whole-memos go with --horse.")


def _agreed(kept: Store, plan: Plan) -> bool:
    from pipeline.cli.output import counted

    what = f"{counted(len(plan.visits), 'visit')} with {counted(plan.facts, 'fact')}"
    sounds = f"{counted(len(plan.memos), 'recording')} with the words heard in it"
    if len(plan.memos) != 1:
        sounds = f"{len(plan.memos)} recordings with the words heard in them"
    whose = ""
    if plan.horse:
        at = f" at {plan.horse.horse.place}" if plan.horse.horse.place else ""
        whose = f"{plan.horse.name}{at}, "
    names = sorted({kept.visit(number).visit.horse or "no name heard" for number in plan.visits})
    typer.echo(f"This removes for good: {whose}{what}, {sounds}.")
    if names and (plan.horse is None or names != [plan.horse.name]):
        typer.echo(f"These visits are of: {', '.join(names)}.")
    _tell_shared(plan.shared, "would stay")
    try:
        return typer.confirm("Remove it?")
    except typer.Abort:  # no answer is no agreement
        typer.echo()
        return False


def _tell(forgotten: Forgotten, copies: Sequence[Path]) -> None:
    from pipeline.cli.endings import say
    from pipeline.cli.output import counted
    from pipeline.using.wording import harmless

    parts = [
        counted(forgotten.horses, "horse"),
        counted(forgotten.memos, "recording"),
        counted(forgotten.visits, "visit"),
        counted(forgotten.facts, "fact"),
    ]
    typer.echo(f"Removed for good: {', '.join(parts)}.")
    _tell_shared(forgotten.shared, "stayed")
    shared = {memo.id for memo in forgotten.shared}
    for memo in (memo for memo in forgotten.still_named if memo.id not in shared):
        say(harmless(f"Memo {memo.id} ({memo.file_name}) still names it; remove it with: forget --memo {memo.id}."))
    for table in forgotten.other_tables:
        say(f"The name still stands in the {table} of what stays.")
    for path in forgotten.waiting:
        say(harmless(f"{path} waits and is named so; take it off the list with: clinchbook waiting --drop N."))
    for path in forgotten.elsewhere:
        say(harmless(f"{path} lies outside the store and stays; delete it, or it will be taken in again."))
    for copy in copies:
        say(harmless(f"{copy} is a copy of the store from before and still holds it; delete it when it is not needed."))
    say("Back-ups and exports made before still hold it; the next back-up into the same folder will not.")


def _tell_shared(shared: Sequence[SharedMemo], stay: str) -> None:
    from pipeline.using.wording import harmless

    for memo in shared:
        typer.echo(
            harmless(
                f"Memo {memo.id} ({memo.file_name}) also holds another horse: its sound and words {stay}, with what "
                f"was said of this one in them. Remove it whole with --whole-memos or: forget --memo {memo.id}."
            )
        )
