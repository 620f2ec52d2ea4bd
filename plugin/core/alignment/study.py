"""All that is asked of a road at once: profile, sections, grades, crossfall, curves, checks and indications."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Sequence, Tuple

import numpy as np

from ..messages import Message, SurveyError, message
from ..progress import Progress, part, silent
from ..surface.tin import Tin
from .checks import CheckResult, check_line
from .crowns import Lane, find_lane, kerbs_within
from .curves import FittedProfile, fit_curves
from .grades import WindowSlopes, grades, reach
from .indications import Gutter, KerbFlows, Sight, check_gutter, flow_to_kerbs, sight_on_crests
from .line import Alignment
from .parts import PartSlopes, part_slopes
from .profile import Profile, make_profile
from .rules import LeastK, Rule, default_rules, without_doubles
from .sections import Sections, cut_sections, section_distances
from .slopes import Sigma
from .standing import StandingWater
from .texts import KERB_IN_LANE


@dataclass(frozen=True)
class RoadOptions:
    """``interval``: between stations and cross-sections, in the line's unit. The rest in metres and ratios.

    ``half_width``: of sections to either side. ``lane``: offsets (left, right) of the lane's edges or kerb feet,
    between which crossfall is taken. ``window``: over which slopes are taken for tables and figures (rules bring
    theirs). ``spacing``: between the heights that curves are fitted to. ``least_fall``: ratio by which a half of the
    lane should fall to its kerb; ``least_grade``: of a gutter. ``inlets``: places (q, 2) of each
    gully, metres of the CRS. ``rules``: the table of limits; ``speeds``: table of
    least K for sight on crests, empty for none.
    """

    interval: float = 10.0
    half_width: float = 10.0
    lane: Tuple[float, float] = (-2.0, 2.0)
    window: float = 5.0
    spacing: float = 1.0
    least_fall: float = 0.005
    least_grade: float = 0.005
    inlets: Tuple[np.ndarray, ...] = ()
    rules: Optional[Tuple[Rule, ...]] = None
    speeds: Tuple[LeastK, ...] = ()


@dataclass(frozen=True)
class RoadStudy:
    """What :func:`study_road` found.

    ``sigma``: the noise of heights that all standard deviations rest on. ``stations``: (s,) distances (m) of
    ``profile`` and ``sections``. ``fit``: None where the profile is too short for one. ``gutters``: left and right,
    those on the surface. ``sight``: None without a table of speeds. ``messages``: what the line, the profile and the
    sections have to say.
    """

    line: Alignment
    options: RoadOptions
    sigma: Sigma
    stations: np.ndarray
    profile: Profile
    grades: WindowSlopes
    lane: Lane
    crossfalls: PartSlopes
    fit: Optional[FittedProfile]
    sections: Sections
    checks: CheckResult
    flows: KerbFlows
    gutters: Tuple[Gutter, ...]
    sight: Optional[Sight]
    messages: Tuple[Message, ...]

    @property
    def rules(self) -> Tuple[Rule, ...]:
        """The table of limits, each limit once."""
        return _rules(self.options)


def study_road(
    line: Alignment,
    surfaces: Sequence[Tuple[str, Tin]],
    sigma: Sigma,
    options: RoadOptions = RoadOptions(),
    progress: Progress = silent,
) -> RoadStudy:
    """Study a road on named ``surfaces``; all but profile and sections is of the first, whose noise is ``sigma``.

    Raises SurveyError for a line that is nowhere on a surface and for options that do not fit the line.
    """
    tin = surfaces[0][1]
    profile = make_profile(line, surfaces)
    progress(0.1, "alignment")
    stations = section_distances(line, options.interval)
    sections = cut_sections(line, stations, options.half_width, options.half_width, surfaces, part(progress, 0.1, 0.3))
    window = min(options.window, line.length)
    low, high = options.lane
    within = reach(line, tin, (0.0, low, high))
    along = grades(line, tin, sigma, window, within=within, together=True)
    lane = find_lane(line, tin, sigma, low, high, within)
    across = part_slopes(line, tin, sigma, lane, window, within=within, together=True)
    progress(0.4, "alignment")
    fit = fitted(profile, options.spacing)
    progress(0.5, "alignment")
    measured = (options.window, along, across)
    checks = check_line(line, tin, sigma, _rules(options), lane, within, fit, part(progress, 0.5, 0.8), measured)
    flows = flow_to_kerbs(across, options.least_fall)
    gutters = _gutters(line, tin, sigma, options)
    sight = sight_on_crests(fit, options.speeds) if fit is not None and options.speeds else None
    progress(1.0, "alignment")
    said = (*line.messages, *profile.messages, *sections.messages, *_of_lane(line, lane))
    return RoadStudy(
        line, options, sigma, stations, profile, along, lane, across, fit, sections, checks, flows, gutters, sight, said
    )


def _rules(options: RoadOptions) -> Tuple[Rule, ...]:
    return without_doubles(default_rules() if options.rules is None else options.rules)


def _of_lane(line: Alignment, lane: Lane) -> List[Message]:
    """Where a kerb ends the lane that was asked for."""
    kerbs = kerbs_within(lane)
    if not kerbs:
        return []
    stretches = ", ".join(f"{line.label(begin)} – {line.label(end)}" for begin, end in kerbs)
    return [message(KERB_IN_LANE, name=line.name, stretches=stretches)]


def fitted(profile: Profile, spacing: float) -> Optional[FittedProfile]:
    """Grades and curves of the first surface of ``profile``; None where there are too few heights."""
    try:
        return fit_curves(profile.surfaces[0], spacing)
    except SurveyError:
        return None


def _gutters(line: Alignment, tin: Tin, sigma: Sigma, options: RoadOptions) -> Tuple[Gutter, ...]:
    """Left and right; one that is nowhere on the surface is left out."""
    found: List[Gutter] = []
    water = StandingWater(tin, options.inlets)
    for offset in options.lane:
        try:
            found.append(check_gutter(line, tin, sigma, offset, options.least_grade, options.window, water=water))
        except SurveyError:
            continue
    return tuple(found)
