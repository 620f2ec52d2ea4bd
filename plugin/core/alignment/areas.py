"""Areas between two surfaces in cross-sections, and the doubt that the noise of their heights makes.

Between the edges of both surfaces their difference is linear, so an area is a sum of widths times differences of
height at the middle of the pieces, and each of these a weighted sum of vertices' heights. The standard deviation of
an area follows from those weights (law of propagation of uncertainty, JCGM 100:2008, 5.1.2): exact for the difference
of fill and cut; of first order for cut and for fill, as noise also moves where one passes into the other. Where the
surfaces lie within the noise of each other, cut and fill both come out too large.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Sequence, Tuple

import numpy as np
from scipy.sparse import csr_matrix

from ..surface.tin import Tin
from .sections import Sections
from .slopes import LinearForms, Sigma, height_forms

Part = Tuple[np.ndarray, np.ndarray]


@dataclass(frozen=True)
class NoisySurface:
    """A surface that was cut and the noise of its heights (m); 0 for a design."""

    tin: Tin
    sigma: Sigma


@dataclass(frozen=True)
class SectionAreas:
    """Of s sections, square metres: ``cut`` (s,) where the second surface is below the first, ``fill`` where above.

    ``covered``: (s,) metres of width where both surfaces are. ``cut_sigma``, ``fill_sigma``: (s,) standard deviations,
    ``net_sigma``: that of fill less cut; nan where none were asked for or both surfaces are nowhere.
    """

    cut: np.ndarray
    fill: np.ndarray
    covered: np.ndarray
    cut_sigma: np.ndarray
    fill_sigma: np.ndarray
    net_sigma: np.ndarray


@dataclass(frozen=True)
class _Pieces:
    """p pieces of sections on which the difference of both surfaces is linear and keeps its sign.

    ``section``: (p,); ``begin``, ``end``: (p,) offsets, metres; ``area``: (p,) second less first, square metres.
    """

    section: np.ndarray
    begin: np.ndarray
    end: np.ndarray
    area: np.ndarray


def section_areas(
    sections: Sections,
    existing: int = 0,
    design: int = 1,
    noise: Optional[Tuple[NoisySurface, NoisySurface]] = None,
) -> SectionAreas:
    """Areas between two of the surfaces that ``sections`` cut, exact between their vertices.

    ``noise``: of both surfaces, for the standard deviations. Raises SurveyError for a vertex without a sigma.
    """
    pieces = _all_pieces(sections, existing, design)
    count = len(sections)

    def total(values: np.ndarray) -> np.ndarray:
        result: np.ndarray = np.bincount(pieces.section, values, count)
        return result

    fill, cut = total(np.maximum(pieces.area, 0.0)), total(np.maximum(-pieces.area, 0.0))
    covered = total(pieces.end - pieces.begin)
    sigmas = [np.full(count, np.nan)] * 3
    if noise is not None and len(pieces.area):
        sign = np.where(pieces.area > 0, 1.0, -1.0)
        masks = (sign < 0, sign > 0, np.ones(len(sign), bool))
        found = (_sigmas(sections, pieces, mask, noise) for mask in masks)
        sigmas = [np.where(covered > 0, sigma, np.nan) for sigma in found]
    return SectionAreas(cut, fill, covered, *sigmas)


def _all_pieces(sections: Sections, existing: int, design: int) -> _Pieces:
    found: List[np.ndarray] = [np.empty((0, 4))]
    for number in range(len(sections)):  # a section has some tens of vertices: the loop costs little beside the cutting
        for one in sections.cuts[existing].parts(number):
            for other in sections.cuts[design].parts(number):
                found.extend(_pieces(number, one, other))
    section, begin, end, area = np.concatenate(found).T
    return _Pieces(section.astype(np.int64), begin, end, area)


def _pieces(number: int, one: Part, other: Part) -> Sequence[np.ndarray]:
    """Rows (section, begin, end, area) where both parts are. A vertical face has no width and counts for nothing."""
    low, high = max(one[0][0], other[0][0]), min(one[0][-1], other[0][-1])
    if high <= low:
        return []
    offset = np.unique(np.concatenate([one[0], other[0], [low, high]]))
    offset = offset[(offset >= low) & (offset <= high)]
    depth = np.interp(offset, *other) - np.interp(offset, *one)
    turn = np.flatnonzero(depth[:-1] * depth[1:] < 0)  # the difference changes sign between two vertices
    share = depth[turn] / (depth[turn] - depth[turn + 1])
    at = offset[turn] + share * (offset[turn + 1] - offset[turn])
    offset, depth = np.insert(offset, turn + 1, at), np.insert(depth, turn + 1, 0.0)
    begin, end = offset[:-1], offset[1:]
    area = (depth[:-1] + depth[1:]) / 2 * (end - begin)
    return [np.column_stack([np.full(len(area), float(number)), begin, end, area])]


def _sigmas(
    sections: Sections, pieces: _Pieces, mask: np.ndarray, noise: Tuple[NoisySurface, NoisySurface]
) -> np.ndarray:
    """Standard deviations (s,) of the areas of the pieces in ``mask``."""
    own = np.flatnonzero(mask)
    section, width = pieces.section[own], (pieces.end - pieces.begin)[own]
    left, right = sections.left[section], sections.right[section]
    share = ((pieces.begin + pieces.end)[own] / 2 + left) / (left + right)
    ends = sections.ends[section]
    middle = ends[:, 0] + share[:, None] * (ends[:, 1] - ends[:, 0])
    gather = csr_matrix((width, (section, np.arange(len(own)))), shape=(len(sections), len(own)))
    variance = np.zeros(len(sections))
    for surface in noise:
        weights = csr_matrix(gather @ height_forms(surface.tin, middle).weights)
        variance += LinearForms(weights, np.ones(len(sections))).sigmas(surface.sigma) ** 2
    result: np.ndarray = np.sqrt(variance)
    return result
