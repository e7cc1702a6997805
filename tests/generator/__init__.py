"""Composes memos of a farrier's speech whose facts are known by construction, and reads them back."""
