"""Who may come in: one browser, by a token that works once, from an address that is ours.

A page of somebody else's in the same browser can send requests here, and can give its own name this machine's address
(DNS rebinding). So every request must name a host that is ours, whatever writes must come from our own pages, and
nothing is told to a browser without the cookie that the token was exchanged for.
"""

from __future__ import annotations

import hmac
import secrets
from dataclasses import dataclass, field

# What a page may load: its own style, script, pictures and sound, and nothing of anybody else's.
HEADERS = {
    "Content-Security-Policy": (
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; media-src 'self'; "
        "form-action 'self'; frame-ancestors 'none'; base-uri 'none'"
    ),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "X-Frame-Options": "DENY",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Cache-Control": "no-store",
}
_BITS = 32  # bytes of a secret: 256 bits


@dataclass
class Gate:
    """The token, the one session that it opens, and the addresses (``host:port``) under which the page is served."""

    hosts: frozenset[str] = frozenset()
    token: str | None = field(default_factory=lambda: secrets.token_urlsafe(_BITS))
    _session: str | None = None
    _form_key: str = field(default_factory=lambda: secrets.token_urlsafe(_BITS))

    @property
    def cookie_name(self) -> str:
        """Cookies are shared by all ports of a host, so the name tells ours from another program's."""
        ports = sorted({host.rpartition(":")[2] for host in self.hosts})
        return "clinchbook-" + "-".join(ports)

    @property
    def form_key(self) -> str:
        """What every form carries, so that a page that cannot read ours cannot write either."""
        return self._form_key

    def enter(self, token: str) -> str | None:
        """Exchange the token for a session's secret; None for a wrong token, and for any token the second time."""
        if self.token is None or not _same(token, self.token):
            return None
        self.token = None
        self._session = secrets.token_urlsafe(_BITS)
        return self._session

    def knows(self, session: str | None) -> bool:
        """Whether this is the session that the token opened."""
        return self._session is not None and session is not None and _same(session, self._session)

    def ours(self, host: str | None) -> bool:
        """Whether a request's Host is one of our addresses."""
        return host is not None and host.lower() in self.hosts

    def from_our_page(self, site: str | None, origin: str | None) -> bool:
        """Whether a writing request comes from a page of ours, as its Sec-Fetch-Site and Origin tell.

        Under no-referrer browsers send the Origin of a form as "null" (Fetch standard, section "Origin header"); then
        Sec-Fetch-Site must say same-origin. Over plain HTTP on a local network there is no Sec-Fetch-Site, and the
        form's key and the cookie alone decide.
        """
        if site is not None and site != "same-origin":
            return False
        if origin is None or origin == "null":
            return True
        return origin.lower() in {f"http://{host}" for host in self.hosts}

    def form_is_ours(self, key: str | None) -> bool:
        """Whether a form carries the key that our pages give it."""
        return key is not None and _same(key, self._form_key)


def _same(given: str, known: str) -> bool:
    return hmac.compare_digest(given.encode("utf-8", "surrogatepass"), known.encode())
