"""clinchbook: a farrier's spoken memos become visit records he can trust."""

from importlib.metadata import PackageNotFoundError, version

try:
    __version__ = version("clinchbook")
except PackageNotFoundError:  # a source tree that was never installed
    __version__ = "0.0.0"
