"""Values in groups: medians and the like of many small groups at once."""

from __future__ import annotations

import numpy as np


def group_quantile(values: np.ndarray, group: np.ndarray, many: int, share: float) -> np.ndarray:
    """The value (many,) that a ``share`` of each group's values (n,) lies below, between ranks by halves; nan for none.

    ``group``: (n,) numbers of the groups, 0 to ``many`` - 1.
    """
    order = np.lexsort((values, group))
    count = np.bincount(group, minlength=many)
    start = np.cumsum(count) - count
    place = share * np.maximum(count - 1, 0)
    low, high = np.floor(place).astype(np.int64), np.ceil(place).astype(np.int64)
    result = np.full(many, np.nan)
    some = np.flatnonzero(count)
    ranked = values[order]
    result[some] = (ranked[start[some] + low[some]] + ranked[start[some] + high[some]]) / 2
    return result


def group_median(values: np.ndarray, group: np.ndarray, many: int) -> np.ndarray:
    """Median (many,) of each group's values (n,); nan for none."""
    return group_quantile(values, group, many, 0.5)


def group_mean(values: np.ndarray, group: np.ndarray, many: int) -> np.ndarray:
    """Mean (many,) of each group's values (n,); nan for none."""
    count = np.bincount(group, minlength=many)
    total = np.bincount(group, weights=values, minlength=many)
    return np.where(count > 0, total / np.maximum(count, 1), np.nan)


def neighbours(counts: np.ndarray) -> tuple:
    """Numbers (n,) of the values before and after each in its group, groups one after another; at an end itself."""
    n = int(counts.sum())
    number = np.arange(n)
    end = np.cumsum(counts)
    first = np.repeat(end - counts, counts)
    last = np.repeat(end - 1, counts)
    return np.maximum(number - 1, first), np.minimum(number + 1, last)
