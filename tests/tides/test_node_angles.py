"""The angles u of the node rules, held to one another as Schureman (1941) writes them."""

from __future__ import annotations

import numpy as np

from planner.tides.nodes import RULES, node_factors


def test_angles_of_one_geometry_keep_their_signs() -> None:
    """KJ2 moves by -2 nu, twice J1 (76, 79); M1C by xi - nu, half of M2 (78, 144)."""
    nodes = np.arange(0.0, 360.0, 15.0)
    _, u = node_factors(np.zeros(nodes.size), nodes)
    of = {rule: u[:, at] for at, rule in enumerate(RULES)}
    assert np.abs(of["J1"]).max() > 10  # nu reaches 13 degrees
    np.testing.assert_allclose(of["KJ2"], 2 * of["J1"], atol=1e-9)
    np.testing.assert_allclose(of["M1C"], of["M2"] / 2, atol=1e-9)
