"""Pictures of every page, desktop and phone, over the demo day: ``python -m tests.page.pictures FOLDER STORE``.

FOLDER gets the pictures; STORE, a store with the demo day in it, is copied first and stays as it is.
"""

from __future__ import annotations

import shutil
import sys
import tempfile
from pathlib import Path

from playwright.sync_api import FloatRect, Locator

from tests.page.browsing import PHONE, Window, enter, served, window

DESK = (1000, 700)
TALLEST = 1600  # pixels of a page that a picture shows


def main(folder: Path, store: Path) -> None:
    """Make them all."""
    folder.mkdir(parents=True, exist_ok=True)
    for name, size in (("desktop", DESK), ("phone", PHONE)):
        with tempfile.TemporaryDirectory() as place:
            copy = shutil.copytree(store, Path(place) / "store")
            with served(copy) as address, window(size) as at:
                _take(at, address, folder, name)


def _take(at: Window, address: str, folder: Path, name: str) -> None:
    page = at.page

    def shot(what: str) -> None:
        size = page.viewport_size or {"width": 0, "height": 0}
        tall: int = at.value("document.documentElement.scrollHeight")
        clip: FloatRect = {"x": 0, "y": 0, "width": size["width"], "height": min(max(tall, 400), TALLEST)}
        page.screenshot(path=folder / f"{what}-{name}.png", full_page=True, clip=clip)
        for fault in at.faults():
            print(f"{what}-{name}: {fault}")

    page.goto(address)
    shot("enter")
    enter(at, address)
    shot("day")
    follow(page.get_by_role("link", name="Larkspur").first)
    shot("visit")
    follow(page.get_by_role("link", name="Day", exact=True))
    follow(page.get_by_role("link", name="Hester").first)
    follow(page.get_by_role("link", name="toe length 92 mm"))
    shot("question-field")
    page.get_by_text("Something was missed here").click()
    page.get_by_label("What was said, with its foot").fill("off hind, thrush in the commissure")
    follow(page.get_by_role("button", name="Add it"))
    shot("learning")
    follow(page.get_by_role("button", name="Yes, learn it"))
    follow(page.get_by_role("link", name="Review"))
    shot("question-horse")
    page.goto(page.url.partition("/review")[0] + "/search?words=thrush")
    shot("search")
    follow(page.get_by_role("link", name="Review"))
    ask = page.get_by_role("button", name="skipped question")
    while page.get_by_role("button", name="Skip for now").or_(ask).count():
        if ask.count():
            follow(ask)
        _answer(at)
    shot("done")
    page.goto(page.url.partition("/review")[0] + "/days")
    shot("days")
    page.goto(page.url.partition("/days")[0] + "/visit/999")
    shot("not-here")
    print(f"{name}: {at.complaints}")


def follow(link: Locator) -> None:
    """Press it and wait for the page that it leads to."""
    with link.page.expect_navigation():
        link.click()


def _answer(at: Window) -> None:
    """Say what is right: no horse is lame, the nameless one is of the list, and all else is as it was read."""
    page = at.page
    sound = page.get_by_role("button", name="sound", exact=True)
    whose = page.get_by_role("button", name="Pumpkin (Gooseberry Lane)", exact=True)
    right = page.locator("button.main")
    nobody = page.get_by_role("button", name="None of these: leave it without a horse")
    skip = page.get_by_role("button", name="Skip for now")
    follow(next(one for one in (sound, whose, right, nobody, skip) if one.count()).first)


if __name__ == "__main__":
    main(Path(sys.argv[1]), Path(sys.argv[2]))
