"""Learning the trade's adapter anew."""
