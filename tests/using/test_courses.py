"""Open findings, plans, changes and outcomes, each from a few visits."""

from __future__ import annotations

import pytest

from pipeline.keeping.seen import SeenFact, SeenVisit
from pipeline.using.changes import changes, course
from pipeline.using.open_findings import open_findings
from pipeline.using.outcomes import outcomes, side_words
from pipeline.using.plan_checks import interval_check, plan_checks
from tests.using.seeing import said, visit


def still_open(*visits: SeenVisit) -> list[tuple[str | None, str, str | None, str, str, int]]:
    """Foot, finding, zone, since, last and number of visits."""
    return [
        (one.fact.foot, str(one.fact.value), one.fact.zone, str(one.since), str(one.last), one.visits)
        for one in open_findings(visits)
    ]


THRUSH = said("LF", "finding", "thrush", zone="sulcus")


class TestOpenFindings:
    """What was said and never said to be gone."""

    def test_since_the_first_visit_without_a_break(self) -> None:
        assert still_open(visit(0, THRUSH), visit(6), visit(12, THRUSH)) == [
            ("LF", "thrush", "sulcus", "2026-01-05", "2026-03-30", 2)
        ]

    @pytest.mark.parametrize("status", ["resolved", "absent"])
    def test_gone_is_gone_and_a_new_one_starts_anew(self, status: str) -> None:
        gone = visit(6, said("LF", "finding", "thrush", status))
        assert still_open(visit(0, THRUSH), gone) == []
        assert still_open(visit(0, THRUSH), gone, visit(12, THRUSH)) == [
            ("LF", "thrush", "sulcus", "2026-03-30", "2026-03-30", 1)
        ]

    @pytest.mark.parametrize(
        "other",
        [
            said("RF", "finding", "thrush", "resolved"),
            said("LF", "finding", "canker", "resolved"),
            said("LF", "finding", "thrush", "resolved", zone="commissure"),
            said(None, "finding", "thrush", "absent"),
            said("LF", "finding", "thrush", "history"),
            said("LF", "finding", "thrush", "planned"),
        ],
    )
    def test_what_is_said_of_something_else_closes_nothing(self, other: SeenFact) -> None:
        assert [found[:3] for found in still_open(visit(0, THRUSH), visit(6, other))] == [("LF", "thrush", "sulcus")]

    def test_seen_and_gone_in_one_visit_stays_open(self) -> None:
        both = visit(6, said("LF", "finding", "thrush", "resolved"), THRUSH)
        assert len(still_open(visit(0, THRUSH), both)) == 1

    def test_the_lately_said_and_the_worse_come_first(self) -> None:
        old = visit(0, said("RH", "finding", "abscess", severity="severe"))
        new = visit(
            6,
            said("LH", "finding", "corn", severity="mild"),
            said("RF", "finding", "bruise", severity="severe"),
            said("LF", "finding", "flare"),
        )
        assert [found[1] for found in still_open(old, new)] == ["bruise", "flare", "corn", "abscess"]


class TestPlans:
    """What was planned and what came of it."""

    PLAN = said("LF", "shoe_type", "egg_bar", "planned")

    @pytest.mark.parametrize(
        ("later", "came"),
        [
            ([], "to_come"),
            ([visit(6)], "not_said"),
            ([visit(6, said("LF", "shoe_type", "egg_bar"))], "done"),
            ([visit(6, said("LF", "shoe_type", "plain"))], "otherwise"),
            ([visit(6, said("RF", "shoe_type", "egg_bar"))], "not_said"),
            ([visit(6), visit(12, said("LF", "shoe_type", "egg_bar"))], "done"),
            ([visit(6, said("LF", "shoe_type", "egg_bar", "absent"))], "not_said"),
        ],
    )
    def test_what_came_of_it(self, later: list[SeenVisit], came: str) -> None:
        checks = plan_checks([visit(0, self.PLAN), *later])
        assert [(check.fact.value, check.came) for check in checks] == [("egg_bar", came)]

    def test_the_interval_asked_for_beside_the_one_that_came(self) -> None:
        asked = said(None, "next_visit_weeks", 6.0, "planned")
        found = interval_check([visit(0, asked), visit(8)])
        assert found is not None
        assert (found.asked_weeks, found.came_weeks) == (6.0, 8.0)
        assert interval_check([visit(0, asked)]) is None
        assert interval_check([visit(0), visit(8, asked)]) is None


class TestChanges:
    """The last two visits that say it."""

    def test_measures_sizes_and_testers(self) -> None:
        before = visit(
            0, said("LF", "toe_angle", 47.0), said("LF", "shoe_size", "0"), said("LF", "tester", "strong", zone="toe")
        )
        now = visit(
            6, said("LF", "toe_angle", 50.0), said("LF", "shoe_size", "1"), said("LF", "tester", "mild", zone="toe")
        )
        found = [
            (one.now.slot, one.before.value, one.now.value, one.course) for one in changes([before, visit(3), now])
        ]
        assert found == [
            ("tester", "strong", "mild", "better"),
            ("shoe_size", "0", "1", None),
            ("toe_angle", 47.0, 50.0, None),
        ]

    def test_what_stayed_is_no_change_but_an_answer_to_the_testers_is_told(self) -> None:
        facts = (said("LF", "toe_angle", 47.0), said("LF", "tester", "mild", zone="toe"))
        assert [(one.now.slot, one.course) for one in changes([visit(0, *facts), visit(6, *facts)])] == [
            ("tester", "same")
        ]

    def test_other_zones_plans_and_old_news_are_no_change(self) -> None:
        first = visit(0, said("LF", "tester", "strong", zone="toe"), said("LF", "toe_angle", 47.0))
        assert changes([first, visit(6, said("LF", "tester", "mild", zone="heel"))]) == []
        assert changes([first, visit(6, said("LF", "toe_angle", 50.0, "planned"))]) == []
        assert changes([first, visit(6, said("LF", "toe_angle", 50.0)), visit(12)]) == []
        assert changes([]) == []

    @pytest.mark.parametrize(
        ("before", "now", "expected"),
        [
            ("none", "none", "same"),
            ("none", "mild", "worse"),
            ("none", "positive", "worse"),
            ("positive", "none", "better"),
            ("strong", "moderate", "better"),
            ("mild", "strong", "worse"),
            ("positive", "mild", "not comparable"),
            ("moderate", "positive", "not comparable"),
        ],
    )
    def test_how_an_answer_went_on(self, before: str, now: str, expected: str) -> None:
        assert course(before, now) == expected


class TestOutcomes:
    """Before and after a change of set-up."""

    PLAIN = (said("LF", "work", "new_shoe"), said("LF", "shoe_type", "plain"))
    BARS = (said("LF", "work", "new_shoe"), said("LF", "shoe_type", "egg_bar"))

    def test_counts_on_either_side(self) -> None:
        corn = said("LF", "finding", "corn")
        sore = said("LF", "tester", "moderate", zone="heel")
        visits = [
            visit(0, corn, *self.PLAIN),
            visit(6, corn, sore, said("LF", "shoe_type", "egg_bar", "planned"), said("LF", "work", "reset")),
            visit(12, corn, sore, *self.BARS),
            visit(18, said("LF", "finding", "corn", "suspected"), said("LF", "work", "reset")),
            visit(24, said("LF", "tester", "none", zone="heel"), said("LF", "work", "reset")),
        ]
        (found,) = outcomes(visits)
        assert (found.foot, str(found.day), found.old, found.new, found.planned) == (
            "LF", "2026-03-30", "plain", "egg bar", True,
        )  # fmt: skip
        assert side_words(found.before) == "corn 3 of 3; testers heel moderate, heel moderate"
        assert side_words(found.after) == "perhaps corn 1 of 2; testers heel none"

    def test_a_type_that_was_only_not_said_is_no_change(self) -> None:
        assert outcomes([visit(0, said("LF", "work", "new_shoe")), visit(6, *self.BARS)]) == []
        assert outcomes([visit(0, *self.BARS), visit(6, said("LF", "work", "new_shoe"))]) == []

    def test_shod_to_bare_and_a_pad_less_are_changes(self) -> None:
        bare = visit(6, said("LF", "work", "trim"))
        padded = visit(0, *self.PLAIN, said("LF", "pad", "leather"))
        assert [(one.old, one.new) for one in outcomes([padded, bare])] == [("plain, leather pad", "bare")]
        assert [(one.old, one.new) for one in outcomes([padded, visit(6, *self.PLAIN)])] == [
            ("plain, leather pad", "plain")
        ]

    def test_the_time_after_ends_with_the_next_change(self) -> None:
        corn = said("LF", "finding", "corn")
        visits = [visit(0, *self.PLAIN), visit(6, *self.BARS), visit(12, corn, *self.PLAIN), visit(18, corn)]
        newest, first = outcomes(visits)
        assert (first.after.visits, first.after.findings) == (1, {"corn": 1})
        assert (newest.before.visits, newest.before.findings, newest.after.findings) == (1, {"corn": 1}, {"corn": 1})

    def test_what_nobody_has_looked_at_is_marked(self) -> None:
        doubt = said("LF", "finding", "corn", flagged=True)
        (found,) = outcomes([visit(0, *self.PLAIN), visit(6, *self.BARS), visit(12, doubt)])
        assert side_words(found.before) == "no finding said, 2 visits"
        assert side_words(found.after) == "(!) corn 1 of 1"
