"""The night review as a local web page: server-rendered, on this machine alone unless he says otherwise."""
