"""``clinchbook words``: the user's own words for things of the trade."""

from __future__ import annotations

from typing import Annotated

import typer

from pipeline.cli.options import JsonOption, StoreOption

words = typer.Typer(
    rich_markup_mode=None, no_args_is_help=True, help="Your own words.\n\nExample: clinchbook words list"
)

FormArgument = Annotated[str, typer.Argument(metavar="FORM", help="The word or words as you say them.")]


@words.command("add")
def add(
    name: Annotated[str, typer.Argument(metavar="CLASS", help="The class of words, such as findings or shoe_types.")],
    canonical: Annotated[str, typer.Argument(metavar="CANONICAL", help="What is meant, such as thrush.")],
    form: FormArgument,
    store: StoreOption = None,
) -> None:
    """Say what a word of yours means; it counts from the next memo on.

    Example: clinchbook words add findings thrush "the rot"
    """
    from pipeline.keeping import store_folder
    from pipeline.keeping.own_words import add_word

    added = add_word(store_folder(store), name, canonical, form)
    meaning = canonical.replace("_", " ")
    typer.echo(f"“{added.form}” means {meaning} now." if added else f"“{form}” meant {meaning} already.")


@words.command("list")
def list_words(store: StoreOption = None, as_json: JsonOption = False) -> None:
    """List your own words.

    Example: clinchbook words list
    """
    from pipeline.cli.endings import say
    from pipeline.cli.output import print_json
    from pipeline.keeping import Store, store_folder
    from pipeline.keeping.location import is_store
    from pipeline.keeping.own_words import own_words
    from pipeline.using.wording import harmless

    folder = store_folder(store)
    found = own_words(folder)
    names = []
    if is_store(folder):
        with Store.open(folder, create=False) as kept:
            names = kept.learned_names()
    for word in found:
        if as_json:
            told = {"class": word.name, "canonical": word.canonical, "form": word.form}
            print_json({**told, "heard": True} if word.heard else told)
        else:
            typer.echo(f"{word.name}  {word.canonical}  “{word.form}”{' as heard' if word.heard else ''}")
    for learned in names:
        if as_json:
            print_json({"class": "horse", "canonical": learned.horse, "form": learned.name, "heard": True})
        else:
            typer.echo(harmless(f"horse  {learned.horse}  “{learned.name}” as heard"))
    if not found and not names:
        say("You have added no words of your own yet.")


@words.command("forget")
def forget(form: FormArgument, store: StoreOption = None) -> None:
    """Take out a word of yours, or one learned from you.

    Memos that are kept stay as they are; reread reads them without it.

    Example: clinchbook words forget "the rot"
    """
    from pipeline.keeping import Store, store_folder
    from pipeline.keeping.location import is_store
    from pipeline.keeping.own_words import forget_word
    from pipeline.using.review.learning import forget
    from pipeline.using.wording import harmless

    folder = store_folder(store)
    if not is_store(folder):
        forget_word(folder, form)  # says that there is no such word
    with Store.open(folder, create=False) as kept:
        for said in forget(kept, form):
            typer.echo(harmless(said))
