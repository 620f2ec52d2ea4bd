"""Look a surface over, as a surveyor would before handing it on."""

from __future__ import annotations

from typing import Callable, List, Tuple

from ..linework.constraints import Constraints
from ..points.pointset import PointSet
from ..progress import Progress, silent
from .find_beside import find_beside_lines
from .find_flat import find_flat
from .find_gaps import find_gaps
from .find_long import find_long
from .find_spikes import find_spikes
from .findings import Facts, Finding, FindingKind, FindingOptions
from .tin import Tin

_ORDER = {kind: place for place, kind in enumerate(FindingKind)}


def inspect_surface(
    tin: Tin,
    points: PointSet,
    constraints: Constraints = Constraints(),  # noqa: B008  frozen and empty
    options: FindingOptions = FindingOptions(),  # noqa: B008  frozen
    progress: Progress = silent,
) -> Tuple[Finding, ...]:
    """Everything in ``tin`` that looks wrong; by kind, then the greatest value first.

    ``points``, ``constraints``: what the surface was made from. The findings do not depend on the order of
    the points, but where that order itself says something (recorded spacing, contours given as points).
    Raises SurveyError for a limit that is not above 0.
    """
    options.check()
    facts = Facts(tin, points)
    searches: Tuple[Callable[[], List[Finding]], ...] = (
        lambda: find_flat(facts, constraints, options),
        lambda: find_gaps(facts, constraints, options),
        lambda: find_long(facts, options),
        lambda: find_spikes(facts, options),
        lambda: find_beside_lines(facts, options),
    )
    found: List[Finding] = []
    for done, search in enumerate(searches):
        progress(done / len(searches), "surface")
        found += search()
    progress(1.0, "surface")
    return tuple(sorted(found, key=lambda f: (_ORDER[f.kind], -abs(f.value), f.easting, f.northing)))
