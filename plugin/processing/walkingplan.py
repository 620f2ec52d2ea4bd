"""Before going out: where to walk for the contours or the accuracy wanted, and how long it takes."""

from __future__ import annotations

from typing import Any, Dict, List, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsFeatureRequest,
    QgsGeometry,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterPoint,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.progress import Progress, part
from ..core.quality.plan import LineUse, Terrain, WalkOptions, WalkPlan, plan_walk
from ..core.units import metres_per_unit
from .algorithm import HummockAlgorithm, progress_of, tell
from .drawnsource import parts_of
from .localnumbers import shown, use_units
from .parameters import chosen_source, chosen_unit, core_crs, number, optional_number, qgis_crs, unit_choice
from .sinks import counted
from .styles import WALK, dress_vector
from .trustlayers import walk_counts, walk_fields, write_walk
from .versions import LINE, LINE_SOURCE, NO_CHECK, POLYGON_GEOMETRY, POLYGON_SOURCE, WHOLE_NUMBER

translate = QCoreApplication.translate

#: In the order of the choices of WANTED and GROUND.
WANTED = ("interval", "error", "spacing")
GROUND = (Terrain.EVEN, Terrain.ROLLING, Terrain.BROKEN)
_KMH = 3.6  # of 1 m/s


class PlanWalk(HummockAlgorithm):
    """``hummock:walkingplan``"""

    NAME = "walkingplan"
    ICON = "walkingplan.svg"
    GROUP_ID = "quality"

    def title(self) -> str:
        return translate("hummock", "Walking plan")

    def group(self) -> str:
        return translate("hummock", "Quality")

    def summary(self) -> str:
        return translate("hummock", "Proposes where to walk on an area, how far and how long, before going out.")

    def words(self) -> str:
        return translate("hummock", "plan,passes,lines,spacing,before the survey,distance,time,contour interval,rover")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Given an area and what you want of the survey, a contour interval or a height error, it proposes how "
            "far apart to walk, draws the lines in walking order, and tells the number of points, distance and "
            "time.</p>"
            "<p><b>It assumes</b> a rover that stores a point by itself at the step given. The height error between "
            "passes is reasoned from the noise of one height and from how the ground bends; no standard says it. A "
            "contour interval asks for an RMSE of a third of it (ASPRS Positional Accuracy Standards, 2014, annex "
            "B).</p>"
            "<p><b>Lines:</b> the perimeter first, then passes to and fro, then a few passes across: where those cross "
            "the others, the survey tells its own noise. Columns: order, use (perimeter, pass, cross, link), name, "
            "length_m, from_start_m, minutes. To take them along save the layer as GPX or for your data collector "
            "(Export > Save Features As).</p>"
            "<p><b>What can go wrong:</b> kerbs, ditches and banks narrower than two passes are missed: walk their "
            "edges as coded lines, or cross them squarely every 3 m, from which “Find lines of the ground” finds them. "
            "The plan knows no fences, water, traffic or cattle. Links lead along the "
            "outline, but between parts of an area that do not touch they are straight.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        usual = WalkOptions()
        self._add_wish()
        self._add_walk(usual)
        self._add_more(usual)
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Lines to walk"), LINE_SOURCE),
            translate("hummock", "In walking order."),
        )
        self.add_numbers(
            ("SPACING", translate("hummock", "Spacing of the passes (m)")),
            ("DISTANCE", translate("hummock", "Distance (m)")),
            ("MINUTES", translate("hummock", "Time (minutes)")),
            ("POINT_COUNT", translate("hummock", "Number of points")),
            ("ERROR", translate("hummock", "Height error to expect (m)")),
            ("INTERVAL", translate("hummock", "Contour interval to expect (m)")),
        )

    def _add_wish(self) -> None:
        """Where, and how fine."""
        self.add(
            QgsProcessingParameterFeatureSource("INPUT", translate("hummock", "Area"), [POLYGON_SOURCE]),
            translate(
                "hummock", "Polygons, in a projected CRS; holes are left out. Select features to plan some only."
            ),
        )
        self.add(
            QgsProcessingParameterEnum(
                "WANTED",
                translate("hummock", "Wanted is"),
                [
                    translate("hummock", "a contour interval"),
                    translate("hummock", "a height error of the surface (RMSE)"),
                    translate("hummock", "a spacing of the passes"),
                ],
                defaultValue=0,
            ),
            translate("hummock", "What the value below means."),
        )
        self.add(
            number("VALUE", translate("hummock", "Value wanted"), 0.25, 1e-6),
            translate("hummock", "The interval, error or spacing, in the unit below."),
        )
        self.add(unit_choice("UNIT", translate("hummock", "Unit of the value")), translate("hummock", "Of the value."))
        self.add(
            QgsProcessingParameterEnum(
                "GROUND",
                translate("hummock", "Ground"),
                [
                    translate("hummock", "even: fields, car parks, pitches"),
                    translate("hummock", "rolling: parks, pastures"),
                    translate("hummock", "broken: banks, mounds, building sites"),
                ],
                defaultValue=1,
            ),
            translate("hummock", "How much the ground bends: our own choice of values, no standard."),
        )

    def _add_walk(self, usual: WalkOptions) -> None:
        """What the rover does."""
        self.add(
            number("SIGMA", translate("hummock", "Noise of a height (m, 1 sigma)"), usual.sigma, 0.0),
            translate("hummock", "0.02 is usual for a fixed solution on a pole that is walked."),
        )
        self.add(
            number("STEP", translate("hummock", "A point is stored every (m)"), usual.step, 0.01),
            translate("hummock", "The recording distance set in the receiver."),
        )
        self.add(
            number("SPEED", translate("hummock", "Speed (km/h)"), round(usual.speed * _KMH, 1), 0.1, 120.0),
            translate("hummock", "About 4 walking; what you drive with a vehicle."),
        )

    def _add_more(self, usual: WalkOptions) -> None:
        self.add(
            number("DIRECTION", translate("hummock", "Direction of the passes (degrees from grid north)")),
            translate("hummock", "Empty: so that the fewest passes are needed."),
            advanced=True,
        )
        self.add(
            number("SMALLEST", translate("hummock", "Smallest form to be shown (m wide)"), None, 1e-3),
            translate("hummock", "Passes are at most half of it apart."),
            advanced=True,
        )
        self.add(
            number("WIDEST", translate("hummock", "Passes never farther apart than (m)"), usual.widest, 1e-3),
            translate("hummock", "Whatever the formula allows."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean("PERIMETER", translate("hummock", "Walk the perimeter too"), usual.perimeter),
            translate("hummock", "Without it the surface ends at the outermost passes."),
            advanced=True,
        )
        self.add(
            number("CROSS", translate("hummock", "Passes across"), None, 0, 1000, WHOLE_NUMBER),
            translate("hummock", "Empty: as many as tell the noise of the survey to 15 %, at most five."),
            advanced=True,
        )
        self.add(
            number("TURN_TIME", translate("hummock", "Time for each turn (s)"), usual.turn_time, 0.0),
            translate("hummock", "Stopping, turning, looking for the next line."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterPoint("START", translate("hummock", "Start"), optional=True),
            translate("hummock", "Where you come from. Empty: the south-west."),
            advanced=True,
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        source = chosen_source(self, parameters, "INPUT", context)
        crs = core_crs(source.sourceCrs(), source.sourceName() or "INPUT")
        use_units(crs)
        rings = _rings(source, metres_per_unit(crs), part(progress, 0.0, 0.2))
        options = self._options(crs, parameters, context)
        plan = plan_walk(rings, options, part(progress, 0.2, 0.7))
        progress(0.7, "layers")
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, walk_fields(), LINE, qgis_crs(crs))
        write_walk(plan, crs, options.speed, sink)
        dress_vector(context, place, WALK)
        for text in [*(tell(each) for each in plan.messages), *_summary(plan)]:
            feedback.pushInfo(text)
        return {
            "OUTPUT": place,
            "SPACING": plan.spacing,
            "DISTANCE": plan.distance,
            "MINUTES": plan.seconds / 60,
            "POINT_COUNT": plan.points,
            "ERROR": plan.error,
            "INTERVAL": plan.interval,
        }

    def _options(self, crs: Any, parameters: Dict[str, Any], context: QgsProcessingContext) -> WalkOptions:
        unit = chosen_unit(self, parameters, "UNIT", context)
        assert unit is not None  # it has a default
        value = self.parameterAsDouble(parameters, "VALUE", context) * unit.metres
        wanted = {WANTED[self.parameterAsEnum(parameters, "WANTED", context)]: value}
        cross = optional_number(self, parameters, "CROSS", context)
        return WalkOptions(
            sigma=self.parameterAsDouble(parameters, "SIGMA", context),
            curvature=GROUND[self.parameterAsEnum(parameters, "GROUND", context)].value,
            smallest_form=optional_number(self, parameters, "SMALLEST", context),
            widest=self.parameterAsDouble(parameters, "WIDEST", context),
            step=self.parameterAsDouble(parameters, "STEP", context),
            direction=optional_number(self, parameters, "DIRECTION", context),
            perimeter=self.parameterAsBool(parameters, "PERIMETER", context),
            cross_passes=None if cross is None else int(cross),
            speed=self.parameterAsDouble(parameters, "SPEED", context) / _KMH,
            turn_time=self.parameterAsDouble(parameters, "TURN_TIME", context),
            start=self._start(crs, parameters, context),
            **wanted,
        )

    def _start(
        self, crs: Any, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Optional[Tuple[float, float]]:
        if parameters.get("START") in (None, ""):
            return None
        place = self.parameterAsPoint(parameters, "START", context, qgis_crs(crs))
        metres = metres_per_unit(crs)
        return place.x() * metres, place.y() * metres


def _rings(source: Any, metres: float, progress: Progress) -> List[np.ndarray]:
    """All rings (k, 2) of the layer, metres. Polygons that overlap are joined first."""
    features = counted(source.getFeatures(QgsFeatureRequest(), NO_CHECK), source.featureCount(), progress)
    shapes = [feature.geometry() for feature in features if not feature.geometry().isNull()]
    # An outline that crosses itself, as one drawn by hand may, is taken for what it encloses.
    shapes = [shape if shape.isGeosValid() else shape.makeValid() for shape in shapes]
    whole = QgsGeometry.unaryUnion(shapes) if len(shapes) > 1 else (shapes or [QgsGeometry()])[0]
    whole.convertGeometryCollectionToSubclass(POLYGON_GEOMETRY)
    if whole.isNull() or whole.isEmpty():
        return []
    return [part[:, :2] * metres for part in parts_of(whole, False)]


def _summary(plan: WalkPlan) -> List[str]:
    told = walk_counts(plan)
    if plan.count_of(LineUse.PASS):
        told.append(shown(translate("hummock", "Passes are {spacing:.2f} m apart."), spacing=plan.spacing))
    told.append(
        shown(
            translate("hummock", "To walk: {distance:.0f} m, {time}. Points: {points}, turns: {turns}."),
            distance=plan.distance,
            points=plan.points,
            turns=plan.turns,
            time=_time(plan.seconds),
        )
    )
    told.append(
        shown(
            translate(
                "hummock",
                "Height error to expect: {error:.3f} m (RMSE), good for a contour interval of {interval:.2f} m "
                "or more.",
            ),
            error=plan.error,
            interval=plan.interval,
        )
    )
    return told


def _time(seconds: float) -> str:
    hours, minutes = divmod(max(1, round(seconds / 60)), 60)
    if not hours:
        return translate("hummock", "{minutes} min").format(minutes=minutes)
    return translate("hummock", "{hours} h {minutes:02d} min").format(hours=hours, minutes=minutes)
