"""One exception tree. Each error is one sentence for a person and one exit code for a script."""

from __future__ import annotations


class ClinchbookError(Exception):
    """Root of every error that stops a memo or a command.

    The message is one plain sentence; ``exit_code`` is what the command line leaves with.
    """

    exit_code = 1


class FileMissingError(ClinchbookError):
    """A named file or folder is not there."""

    exit_code = 3


class FileEmptyError(ClinchbookError):
    """A memo of zero bytes."""

    exit_code = 4


class NotSoundError(ClinchbookError):
    """A file that is no sound of a known container: text, a playlist, a picture."""

    exit_code = 5


class NoSoundTrackError(ClinchbookError):
    """A known container without any sound in it."""

    exit_code = 6


class DamagedSoundError(ClinchbookError):
    """Sound that cannot be decoded at all."""

    exit_code = 7


class TooLongError(ClinchbookError):
    """Sound longer than the allowed length."""

    exit_code = 8


class NoSpeechError(ClinchbookError):
    """Silence or noise: nobody speaks."""

    exit_code = 9


class WeightsError(ClinchbookError):
    """The recogniser's weights are missing, damaged or unknown."""

    exit_code = 10


class StoreError(ClinchbookError):
    """The store cannot be opened, read or written."""

    exit_code = 11


class StoreNewerError(StoreError):
    """The store was written by a later version of clinchbook."""

    exit_code = 12


class StoreBusyError(StoreError):
    """Another program holds the store."""

    exit_code = 13


class RosterError(ClinchbookError):
    """A roster that cannot be taken as it is."""

    exit_code = 14


class VocabularyError(ClinchbookError):
    """A vocabulary file with a mistake; the message names file and line."""

    exit_code = 15


class DateError(ClinchbookError):
    """A date that is none."""

    exit_code = 16


class TextError(ClinchbookError):
    """Text or JSON lines that cannot be read."""

    exit_code = 17


class NotFoundError(ClinchbookError):
    """No such horse, visit or memo in the store."""

    exit_code = 18


class SettingsError(ClinchbookError):
    """A setting outside what is allowed."""

    exit_code = 19


class StoreConflictError(StoreError):
    """Somebody else changed the visit since it was looked at."""

    exit_code = 21


class StoreUnsureError(StoreError):
    """It is written, but the disk gave an error in the end, so that a power cut may undo it."""

    exit_code = 27


class CorrectionError(ClinchbookError):
    """A correction that no record can hold, or that nothing is left to apply to."""

    exit_code = 22


class BackupError(ClinchbookError):
    """A back-up that cannot be made, or cannot be restored, as it is."""

    exit_code = 24


class PassphraseError(BackupError):
    """A passphrase that is missing or does not open the back-up."""

    exit_code = 25


class RecordError(ClinchbookError):
    """A record file that cannot be taken in: broken, hostile, redacted, or at odds with the store."""

    exit_code = 26
