"""The command line: arguments in, sentences and tables out. Decisions are made in the steps above."""

from pipeline.cli.app import app, main

__all__ = ["app", "main"]
