"""For every test: no network, and no store, cache or setting of the person who runs them."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import settings
from pytest_socket import disable_socket

# How long an example takes depends on what else the machine does; speed is measured in the benches.
settings.register_profile("unhurried", deadline=None)
settings.load_profile("unhurried")


@pytest.fixture(autouse=True)
def no_network() -> None:
    """Block every socket but those between processes of this machine."""
    disable_socket(allow_unix_socket=True)


@pytest.fixture(autouse=True)
def own_surroundings(monkeypatch: pytest.MonkeyPatch, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Point the store at a fresh folder and take away every setting; returns the store's folder."""
    import os

    for name in [name for name in os.environ if name.startswith("CLINCHBOOK_")]:
        monkeypatch.delenv(name)
    folder = tmp_path_factory.mktemp("surroundings") / "store"
    monkeypatch.setenv("CLINCHBOOK_STORE", str(folder))
    return folder
