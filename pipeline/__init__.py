"""clinchbook: a farrier's spoken memos become visit records he can trust."""


def __getattr__(name: str) -> str:
    """``__version__``, looked up when it is asked for: reading the installed packages takes as long as a search."""
    if name != "__version__":
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from importlib.metadata import PackageNotFoundError, version

    try:
        return version("clinchbook")
    except PackageNotFoundError:  # a source tree that was never installed
        return "0.0.0"
