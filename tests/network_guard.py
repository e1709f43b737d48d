"""Keeps the tests off the network: an audit hook that refuses every address but our own."""

from __future__ import annotations

import ipaddress

# The audit events that carry the far end of a connection, and where in their arguments it is.
_FAR_END = {
    "socket.connect": 1,
    "socket.sendto": 1,
    "socket.sendmsg": 1,
    "socket.getaddrinfo": 0,
    "socket.gethostbyname": 0,
}


class NetworkUsed(BaseException):
    """A test reached for the network; no `except Exception` of the program can hide it."""


def _is_local(far_end: object) -> bool:
    """Tell whether an address stays on this machine: a socket file, no host, or loopback."""
    host = far_end[0] if isinstance(far_end, tuple) and far_end else far_end
    if isinstance(host, bytes):
        host = host.decode("ascii", "replace")
    if isinstance(far_end, str | bytes) and str(host).startswith("/"):
        return True
    if host in (None, "", "localhost"):
        return True
    try:
        return ipaddress.ip_address(str(host)).is_loopback
    except ValueError:
        return False


def refuse_network(event: str, arguments: tuple[object, ...]) -> None:
    """Raise NetworkUsed for an audit event that leaves this machine; let every other pass."""
    place = _FAR_END.get(event)
    if place is not None and not _is_local(arguments[place]):
        raise NetworkUsed(f"{event} to {arguments[place]!r}: nothing here may use the network")
