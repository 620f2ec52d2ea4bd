"""Inverses of many small matrices agree with those of numpy's routine."""

from __future__ import annotations

import numpy as np
import pytest

from plugin.core.inverses import inverses


@pytest.mark.parametrize("size", [1, 3, 6])
def test_inverses_are_those_of_numpy(size: int) -> None:
    random = np.random.default_rng(size)
    columns = random.normal(size=(200, 15, size)) * 10.0 ** random.uniform(-2, 2, (200, 1, size))
    matrices = np.einsum("kmi,kmj->kij", columns, columns)
    kept, found = matrices.copy(), inverses(matrices)
    scale = np.sqrt(np.einsum("kii->ki", matrices))
    unit = found * scale[:, :, None] * scale[:, None, :]
    expected = np.linalg.inv(matrices) * scale[:, :, None] * scale[:, None, :]
    np.testing.assert_allclose(unit, expected, atol=1e-9 * np.abs(expected).max())
    np.testing.assert_array_equal(matrices, kept)


def test_none_and_singular() -> None:
    assert inverses(np.empty((0, 3, 3))).shape == (0, 3, 3)
    assert not np.isfinite(inverses(np.zeros((1, 2, 2)))).any()
