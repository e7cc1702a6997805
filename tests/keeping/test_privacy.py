"""What the store writes is for this user alone, and error messages never tell what was said."""

from __future__ import annotations

import os
import stat
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from pydantic import ValidationError

from pipeline.errors import StoreError
from pipeline.keeping import Store
from pipeline.keeping.own_words import add_word
from pipeline.keeping.privacy import open_to_others
from pipeline.record import Fact, Transcript, Visit

if TYPE_CHECKING:
    from tests.keeping.conftest import Yard

posix = pytest.mark.skipif(os.name != "posix", reason="only there do files have these rights")


@posix
def test_whatever_the_umask_the_store_is_private(tmp_path: Path, trimmed: Visit, yard: Yard) -> None:
    before = os.umask(0)
    try:
        with yard.open() as store:
            yard.keep(store, trimmed)
            yard.keep(store, trimmed)
            add_word(yard.folder, "findings", "thrush", "porridge frog")
            store.forget(store.plan_forgetting_memo(2))
            store._database.execute("BEGIN IMMEDIATE")
            store._database.execute("UPDATE pen SET who = 'somebody'")
            inside = modes_of(yard.folder)
            store._database.execute("ROLLBACK")
    finally:
        os.umask(before)
    assert {name: mode for name, mode in inside.items() if mode not in (0o600, 0o700)} == {}
    assert inside["clinchbook.db-journal"] == inside["clinchbook.db"] == inside["words/findings.csv"] == 0o600
    assert inside["."] == inside["originals"] == inside["words"] == 0o700


def modes_of(folder: Path) -> dict[str, int]:
    """The rights of a folder and all in it."""
    paths = [folder, *folder.rglob("*")]
    return {path.relative_to(folder).as_posix(): stat.S_IMODE(path.stat().st_mode) for path in paths}


@posix
def test_a_store_open_to_others_is_told(yard: Yard, store: Store) -> None:
    assert open_to_others(yard.folder) == []
    (yard.folder / "clinchbook.db").chmod(0o644)
    assert open_to_others(yard.folder) == []
    yard.folder.chmod(0o750)
    assert open_to_others(yard.folder) == [
        f"Other users of this machine can look into {yard.folder}; chmod 700 makes it yours alone.",
        "1 file in it can be read or changed by others.",
    ]
    (yard.folder / "clinchbook.db").chmod(0o600)
    assert len(open_to_others(yard.folder)) == 1
    assert open_to_others(yard.folder / "none") == []


def test_an_error_never_tells_what_was_said(yard: Yard, store: Store, trimmed: Visit) -> None:
    path = yard.recording()
    secret = "Bramble bit Perpetua Vane"
    fact = trimmed.facts[0].model_copy(update={"quote": secret, "foot": "XX"})
    visit = trimmed.model_copy(update={"facts": [fact], "notes": secret})
    with pytest.raises(StoreError) as refused:
        store.keep(yard.record(path, visit, text=secret), Transcript(text=secret), path)
    assert secret not in str(refused.value)
    with pytest.raises(ValidationError) as invalid:
        Fact.model_validate({"foot": "LF", "slot": "nails", "value": 6, "quote": secret, "words": secret})
    assert secret not in str(invalid.value)
