"""Benches: run by hand, their figures written to ``results``."""
