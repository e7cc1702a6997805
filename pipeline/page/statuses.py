"""Which HTTP status goes with which of our errors."""

from __future__ import annotations

from pipeline.errors import (
    ClinchbookError,
    FileMissingError,
    NotFoundError,
    StoreBusyError,
    StoreConflictError,
    StoreError,
)


def status_of(error: ClinchbookError) -> int:
    """The HTTP status that goes with one of our errors."""
    if isinstance(error, NotFoundError | FileMissingError):
        return 404
    if isinstance(error, StoreConflictError):
        return 409
    if isinstance(error, StoreBusyError):
        return 503
    return 500 if isinstance(error, StoreError) else 422
