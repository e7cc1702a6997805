"""Version 7 of the tables: the way back from a fact or a flag to whatever points to it.

Without it every single fact that is removed for good would have all facts and all changes looked through. Most facts
have no origin and most changes are about one fact, so that these indexes stay small.
"""

from __future__ import annotations

VERSION_7 = """
CREATE INDEX facts_by_origin ON facts (origin) WHERE origin IS NOT NULL;
CREATE INDEX changes_by_fact ON changes (fact) WHERE fact IS NOT NULL;
CREATE INDEX changes_by_flag ON changes (flag) WHERE flag IS NOT NULL;
"""
