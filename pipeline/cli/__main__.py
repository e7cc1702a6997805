"""``python -m pipeline.cli`` is the same as ``clinchbook``."""

from pipeline.cli.app import main

main()
