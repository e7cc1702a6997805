"""A real browser at the real command: Chromium, the server in a process of its own, and the checks of a page."""

from __future__ import annotations

import os
import shutil
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from importlib.resources import files
from pathlib import Path
from typing import Any

from playwright.sync_api import ConsoleMessage, Page, Response, sync_playwright

ROOT = Path(__file__).resolve().parents[2]
CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser") or shutil.which("google-chrome")
DESKTOP, PHONE, NARROW = (1280, 900), (360, 740), (320, 640)
# Everything that a finger or a key can reach, with its size; what is hidden has none.
_TARGETS = """
Array.from(document.querySelectorAll("a, button, input:not([type=hidden]), select, summary")).map(function (one) {
  const box = one.getBoundingClientRect();
  return [one.textContent.trim().slice(0, 40) || one.name, box.width, box.height];
}).filter(function (one) { return one[1] > 2 && one[2] > 2 && (one[1] < 44 || one[2] < 44); })
"""
_SIDEWAYS = "document.documentElement.scrollWidth - document.documentElement.clientWidth"
_AXE = """
axe.run(document, {
  runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
  rules: {"color-contrast-enhanced": {enabled: true}, "target-size": {enabled: true}}
}).then(function (found) {
  return found.violations.map(function (one) {
    return one.impact + " " + one.id + ": " + one.nodes.map(function (node) { return node.html; }).join(" | ");
  });
})
"""


@dataclass
class Window:
    """One page of the browser, with what it complained of and what it fetched."""

    page: Page
    complaints: list[str] = field(default_factory=list)
    fetched: list[tuple[int, str]] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.page.on("console", self._hear)
        self.page.on("pageerror", lambda error: self.complaints.append(str(error)))
        self.page.on("response", self._see)

    def value(self, script: str) -> Any:
        """What a script gives in the page. The page's own policy stays as it is: nothing is switched off for this."""
        speaking = self.page.context.new_cdp_session(self.page)
        answer = speaking.send("Runtime.evaluate", {"expression": script, "awaitPromise": True, "returnByValue": True})
        speaking.detach()
        assert "exceptionDetails" not in answer, answer["exceptionDetails"]
        return answer["result"].get("value")

    def faults(self) -> list[str]:
        """What axe-core finds wrong with the page, targets below 44 pixels, and scrolling sideways."""
        self.value(files("axe_playwright_python").joinpath("axe.min.js").read_text(encoding="utf-8"))
        found: list[str] = self.value(_AXE)
        small = [f"small: {words} {width:.0f}x{height:.0f}" for words, width, height in self.value(_TARGETS)]
        wide = self.value(_SIDEWAYS)
        return [*found, *small, *([f"scrolls sideways by {wide}"] if wide else [])]

    def _hear(self, message: ConsoleMessage) -> None:
        if message.type in ("error", "warning"):
            self.complaints.append(message.text)

    def _see(self, response: Response) -> None:
        self.fetched.append((response.status, response.url))


@contextmanager
def served(store: Path) -> Iterator[str]:
    """Run ``clinchbook review --page`` over a store; gives the address that it prints, ends it by Ctrl-C."""
    command = [sys.executable, "-m", "pipeline.cli", "review", "--page", "--port", "0", "--who", "Reviewer"]
    serving = subprocess.Popen(
        [*command, "--store", str(store)], cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    )
    assert serving.stdout is not None
    try:
        yield serving.stdout.readline().strip()
    finally:
        serving.send_signal(signal.SIGINT)
        _, told = serving.communicate(timeout=30)
    assert (serving.returncode, told.splitlines()[-1]) == (0, "Stopped. Every answer is kept.")


@contextmanager
def window(size: tuple[int, int]) -> Iterator[Window]:
    """A fresh browser with one page of this size in CSS pixels."""
    with sync_playwright() as playwright:
        # Chromium has no sandbox to offer where the tests run as root, as in a container.
        arguments = ["--no-sandbox"] if os.name == "posix" and os.geteuid() == 0 else []
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=arguments)
        try:
            phone = size[0] < 600
            context = browser.new_context(
                viewport={"width": size[0], "height": size[1]}, has_touch=phone, is_mobile=phone
            )
            page = context.new_page()
            page.set_default_timeout(20_000)
            yield Window(page)
        finally:
            browser.close()


def enter(at: Window, address: str) -> None:
    """Open the printed address and come in."""
    at.page.goto(address)
    at.page.get_by_role("button", name="Open the book").click()
    at.page.wait_for_url("**/day/*")
