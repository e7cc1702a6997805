"""``python -m tests.endurance.keep_one TASK FOLDER``: one step in the yard of FOLDER, for a tracer to watch."""

from __future__ import annotations

import sys
from pathlib import Path

from pipeline.errors import ClinchbookError
from pipeline.keeping import Store
from tests.endurance.yard import keep, spoken

ACKNOWLEDGED = "It is kept."


def do(task: str, folder: Path) -> None:
    """Keep the second memo of the yard, or assign the first visit."""
    with Store.open(folder / "book") as store:
        if task == "keep":
            keep(store, spoken(folder, 2))
        else:
            store.assign(store.memos()[0].visit_ids[0], store.horse("Tansy"), who="Ann")


def main() -> int:
    """Do it and say so; a problem is a sentence and an exit code, as on the command line."""
    task, folder = sys.argv[1], Path(sys.argv[2])
    try:
        do(task, folder)
        sys.stdout.write(f"{ACKNOWLEDGED}\n")
        sys.stdout.flush()
    except ClinchbookError as error:
        sys.stderr.write(f"{error}\n")
        return error.exit_code
    return 0


if __name__ == "__main__":
    sys.exit(main())
