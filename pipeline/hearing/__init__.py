"""Sound in, words out: checking, decoding, dating and recognising a memo."""

import os

# The library that tells speech from silence (onnxruntime, from 1.29 on) reports its use to its maker over the network
# unless it is told not to before it is loaded. Nothing leaves this machine, whatever the user's surroundings say.
os.environ["ORT_DISABLE_TELEMETRY"] = "1"
