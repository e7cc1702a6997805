"""Texts that would run, hide or break something if a page or a PDF took them for more than text."""

from __future__ import annotations

HOSTILE_TEXTS = (
    "<script>alert(1)</script>",
    "</title><script>alert(1)</script>",
    "</style><script>alert(1)</script>",
    '"><img src=x onerror=alert(1)>',
    "' onmouseover='alert(1)",
    "<svg/onload=alert(1)>",
    "javascript:alert(1)",
    "<iframe src=//example.org></iframe>",
    "<meta http-equiv=refresh content='0;url=//example.org'>",
    "<base href=//example.org>",
    "<!-- -->",
    "]]><script>alert(1)</script>",
    "{{ 7*7 }}{% raw %}",
    "&lt;script&gt;alert(1)&lt;/script&gt;",
    "**bold** __bold__ [a](javascript:alert(1))",
    "\u202egnihtemos\u202c",
    "a\x00b\x1b[2Jc\x07",
    "line\nbreak\ttab",
    "x" * 3000,
    "½ ° é ł ő ŵ Ω Ж",
)
