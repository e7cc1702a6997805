"""How well judging knows what is wrong.

``python -m tests.bench.judging`` tells what is flagged and what passes in silence in the written corpora, read as text.
``--train`` trains the model anew from what lies in ``data/``, chooses the levels of care, writes
``pipeline/judging/model.json`` and adds to ``results/judging.csv``. ``--sound DIR``, the hearing bench's folder of
sound, tells the same of its takes, of which only counts are printed; with ``--gather`` what was heard in its tune takes
is read and put into ``data/`` first, which should be done before the reader is improved with those memos.
``--unknown FILE`` reads a written corpus that neither reader knows yet and adds it to ``data/``. ``--pictures``
draws outputs/judging.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path

from pipeline.judging import judge
from pipeline.judging.model import Care, shipped
from pipeline.judging.opinion import shipped_opinion
from pipeline.judging.overlooked import shipped_signs
from pipeline.reading import Reader
from pipeline.record import Transcript
from pipeline.vocabulary import load_vocabulary
from tests.bench.judging.examples import (
    heard_examples,
    read,
    read_twice,
    roster_of,
    said_by,
    sentences_by,
    typed_examples,
)
from tests.bench.judging.gathering import (
    CORPUS,
    NO_SECONDS,
    HeardReading,
    add_past,
    all_have_seconds,
    heard_readings,
    past_readings,
    write_readings,
)
from tests.bench.judging.heard import heard_takes
from tests.bench.judging.opining import fit_opinion, opinions_left_out, write_opinion
from tests.bench.judging.outcomes import Tally, add_memo
from tests.bench.judging.overlooking import chances_left_out, fit_signs, levels_of, told, write_signs
from tests.bench.judging.pictures import draw
from tests.bench.judging.training import train, write
from tests.bench.judging.where import places_in
from tests.facts.scoring import load_gold

OUTPUTS = Path(__file__).resolve().parents[3] / "outputs" / "judging"


def tally_text(prefix: str, care: Care = Care.USUAL) -> Tally:
    """Every memo of the corpora whose name begins with ``prefix``, read as typed text and judged."""
    vocabulary = load_vocabulary()
    reader, tally = Reader(vocabulary), Tally()
    for gold in (gold for path in sorted(CORPUS.glob(f"{prefix}*.jsonl")) for gold in load_gold(path)):
        transcript = Transcript(text=gold["text"])
        visits = judge(read_twice(reader, gold, transcript), transcript, care=care, roster=roster_of(gold))
        add_memo(tally, gold, visits, vocabulary, gold["text"])
    return tally


def tally_sound(sound: Path, part: str, care: Care = Care.USUAL) -> dict[str, Tally]:
    """Every take that was heard already, judged, by condition."""
    vocabulary = load_vocabulary()
    reader = Reader(vocabulary)
    found: dict[str, Tally] = {}
    for take in heard_takes(sound, part):
        found_there = read_twice(reader, take.gold, take.transcript, take.flags)
        visits = judge(found_there, take.transcript, care=care, flags=take.flags, roster=roster_of(take.gold))
        tally = found.setdefault(take.condition, Tally())
        add_memo(tally, take.gold, visits, vocabulary, take.transcript.text, take.flags, places_in(take, reader))
    return found


def tell(sound: Path | None) -> None:
    """Print what each level of care comes to."""
    for care in Care:
        for prefix in ("open_", "kept_"):
            print(tally_text(prefix, care).lines(f"{prefix}text {care}"))
        for part in ("tune", "report") if sound else ():
            for condition, tally in tally_sound(sound, part, care).items() if sound else ():
                print(tally.lines(f"{part} {condition} {care}"))


def main(given: Sequence[str] | None = None) -> int:
    """Run what was asked for."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.judging", description=(__doc__ or "").split("\n")[0])
    parser.add_argument("--train", action="store_true", help="train the model anew and write it")
    parser.add_argument("--sound", type=Path, metavar="DIR", help="the hearing bench's folder of sound")
    parser.add_argument("--gather", action="store_true", help="take what was heard in tune from --sound")
    parser.add_argument("--unknown", type=Path, metavar="FILE", help="a corpus that the reader does not know yet")
    parser.add_argument("--pictures", action="store_true", help="draw the curve and the diagram")
    chosen = parser.parse_args(given)
    if chosen.gather and chosen.sound:
        reader = Reader(load_vocabulary())
        takes = heard_takes(chosen.sound, "tune")
        readings = (HeardReading(take, read(reader, take.gold, take.transcript)) for take in takes)
        print(f"{write_readings(readings)} takes gathered.")
    if chosen.unknown:
        reader = Reader(load_vocabulary())
        added = add_past(chosen.unknown, lambda gold: read(reader, gold, Transcript(text=gold["text"])))
        print(f"{added} memos added.")
    if chosen.train or chosen.pictures:
        typed, heard = list(past_readings()), list(heard_readings())
        if not all_have_seconds([*typed, *heard]):
            print(NO_SECONDS, file=sys.stderr)
            return 1
        said = said_by(typed, heard)
        opinions = opinions_left_out(said)
        model, found = train(typed_examples(typed, opinions), heard_examples(heard, opinions))
        if chosen.train:
            write_opinion(fit_opinion(said))
            sentences = sentences_by(typed, heard)
            chances = chances_left_out(sentences)
            levels = levels_of(sentences, chances)
            write_signs(fit_signs(sentences, levels))
            print("\n".join(told(sentences, chances, levels)))
            write(model, found)
            shipped.cache_clear()
            shipped_opinion.cache_clear()
            shipped_signs.cache_clear()
        if chosen.pictures:
            draw(found, OUTPUTS)
    tell(chosen.sound)
    return 0


if __name__ == "__main__":
    sys.exit(main())
