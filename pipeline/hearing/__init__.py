"""Sound in, words out: checking, decoding, dating and recognising a memo."""
