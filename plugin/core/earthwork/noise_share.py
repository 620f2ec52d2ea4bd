"""How much of a measured cut or fill is made by noise alone.

Where depth is d and noise has the standard deviation s, measured fill max(0, D) is too large by s e(|d| / s) on
average, e(r) = pdf(r) - r (1 - cdf(r)) of the standard normal distribution (the mean of the larger of 0 and a normal
variable), and cut by as much. It is largest, 0.399 s, where nothing changed, and none where the change is large. d is
not known, only D = d + noise, and e(|D| / s) comes to 41 % of the excess where nothing changed. So a function c of D /
s is taken whose mean is right:

    c(z) = ALPHA exp(-z²) + BETA exp(-z² / 4),  E c(r + Z) = ALPHA exp(-r² / 3) / sqrt(3) + BETA exp(-r² / 6) sqrt(2 /
    3)

ALPHA and BETA follow from two conditions: the mean is e(0) where nothing changed, and over ground that crosses from cut
to fill at an even slope (all r alike) the means add up to the excess. Between these, where all of some ground
changed by less than three standard deviations of its noise, cut or fill comes out up to 0.16 s too small (changes of
about 0.7 s) or 0.09 s too large (about 2.7 s); no function of D is right everywhere, as max(0, d) has a corner.
"""

from __future__ import annotations

from typing import Union

import numpy as np
from scipy.special import ndtr

BETA = (1 / np.sqrt(2 * np.pi) - 1 / (2 * np.sqrt(3 * np.pi))) / (np.sqrt(2 / 3) - 2 / np.sqrt(3))
ALPHA = 1 / (2 * np.sqrt(np.pi)) - 2 * BETA
FAR = 6.0  # standard deviations of noise beyond which cut and fill are what they are

_CALM, _CLEAR = 2.0, 4.0  # standard deviations up to which a depth may be noise, and from which it is none


Known = Union[float, np.ndarray]


def noise_share(depth: np.ndarray, sd: np.ndarray, known: Known = np.nan) -> np.ndarray:
    """What noise of standard deviation ``sd`` (m) is to be taken for, in measured cut and in fill of ``depth`` (m).

    ``known``: by how much the ground did change (m), where that is known, else nan.
    """
    fall = np.exp(-((depth / np.maximum(sd, 1e-300)) ** 2) / 4)
    share: np.ndarray = sd * fall * (BETA + ALPHA * (fall * fall * fall))
    if np.all(np.isnan(known)):
        return share
    ratio = np.abs(known) / np.maximum(sd, 1e-300)
    result: np.ndarray = np.where(np.isnan(known), share, sd * _density(ratio) - np.abs(known) * ndtr(-ratio))
    return result


def settled(depth: np.ndarray, sd: np.ndarray, known: Known = np.nan) -> np.ndarray:
    """Depths (m) without what may as well be noise: 0 up to twice ``sd``, as they are from four times on; what is
    ``known`` as it is."""
    size = np.abs(depth) / np.maximum(sd, 1e-300)
    plain = depth * np.clip((size - _CALM) / (_CLEAR - _CALM), 0.0, 1.0)
    result: np.ndarray = np.where(np.isnan(known), plain, known)
    return result


def part_of_fill(depth: np.ndarray, sd: np.ndarray, known: Known = np.nan) -> np.ndarray:
    """By how much fill follows a rising depth, 0 to 1: half where nothing changed, as noise goes either way."""
    result: np.ndarray = ndtr(settled(depth, sd, known) / np.maximum(sd, 1e-300))
    return result


def _density(z: np.ndarray) -> np.ndarray:
    """Of the standard normal distribution."""
    result: np.ndarray = np.exp(-(z**2) / 2) / np.sqrt(2 * np.pi)
    return result
