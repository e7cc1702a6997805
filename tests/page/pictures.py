"""Pictures of every page, desktop and phone, over the demo day: ``python -m tests.page.pictures FOLDER STORE``.

FOLDER gets the pictures; STORE, a store with the demo day in it, is copied first and stays as it is.
"""

from __future__ import annotations

import shutil
import sys
import tempfile
from pathlib import Path

from tests.page.browsing import DESKTOP, PHONE, Window, enter, served, window


def main(folder: Path, store: Path) -> None:
    """Make them all."""
    folder.mkdir(parents=True, exist_ok=True)
    for name, size in (("desktop", DESKTOP), ("phone", PHONE)):
        with tempfile.TemporaryDirectory() as place:
            copy = shutil.copytree(store, Path(place) / "store")
            with served(copy) as address, window(size) as at:
                _take(at, address, folder, name)


def _take(at: Window, address: str, folder: Path, name: str) -> None:
    page = at.page

    def shot(what: str, whole: bool = False) -> None:
        page.screenshot(path=folder / f"{what}-{name}.png", full_page=whole)
        for fault in at.faults():
            print(f"{what}-{name}: {fault}")

    page.goto(address)
    shot("enter")
    enter(at, address)
    shot("day", whole=True)
    page.get_by_role("link", name="Larkspur").first.click()
    shot("visit", whole=True)
    page.get_by_role("link", name="Review").click()
    shot("question-horse", whole=True)
    page.get_by_role("button", name="Skip for now").click()
    shot("question-field", whole=True)
    page.goto(page.url.partition("/review")[0] + "/search?words=thrush")
    shot("search")
    page.get_by_role("link", name="Review").click()
    while page.get_by_role("button", name="Skip for now").count():
        buttons = page.locator("button.main")
        with page.expect_navigation():
            (buttons if buttons.count() else page.get_by_role("button", name="Skip for now")).first.click()
    shot("done")
    page.goto(page.url.partition("/review")[0] + "/days")
    shot("days")
    page.goto(page.url.partition("/days")[0] + "/visit/999")
    shot("not-here")
    print(f"{name}: {at.complaints}")


if __name__ == "__main__":
    main(Path(sys.argv[1]), Path(sys.argv[2]))
