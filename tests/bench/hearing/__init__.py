"""The hearing bench: memos spoken by synthetic voices, heard, read, and scored against the corpora's gold."""
