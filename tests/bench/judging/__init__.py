"""How well judging knows what is wrong: what it flags, what it lets pass, and the model that is trained from it."""
