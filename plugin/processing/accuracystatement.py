"""The accuracy statement: a surface against independent check points."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputString,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.points.pointset import PointSet
from ..core.progress import Progress, part
from ..core.quality.accuracy import AccuracyStatement, accuracy_statement
from ..core.quality.check_points import (
    CheckPoints,
    PlanPairs,
    check_shots,
    pair_by_name,
)
from ..core.surface.tin import Tin
from .algorithm import page_language, progress_of, report, say, tell
from .checksource import add_check_parameters, chosen_checks
from .parameters import number, optional_number, optional_source, qgis_crs
from .pointlayer import PointColumns, read_points_layer
from .styles import CHECK_POINTS, dress_vector
from .surfaceinput import SurfaceAlgorithm, same_crs
from .trustlayers import comparison_fields, write_comparison
from .versions import POINT_SOURCE, POINT_Z

translate = QCoreApplication.translate


class StateAccuracy(SurfaceAlgorithm):
    """``hummock:accuracystatement``"""

    NAME = "accuracystatement"
    ICON = "accuracystatement.svg"
    GROUP_ID = "quality"

    def title(self) -> str:
        return translate("hummock", "Accuracy statement")

    def group(self) -> str:
        return translate("hummock", "Quality")

    def summary(self) -> str:
        return translate("hummock", "Tests a surface against check points, by NSSDA and ASPRS.")

    def words(self) -> str:
        return translate("hummock", "accuracy,check points,RMSE,bias,NSSDA,FGDC,ASPRS,vertical class,95 percent,test")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Compares a surface with check points and says what that shows: bias, RMSE, the 95 % accuracy of the "
            "NSSDA (FGDC-STD-007.3-1998), and the vertical class of the ASPRS Positional Accuracy Standards, edition 2 "
            "(2023), with the check points' own error in it. Where there are fewer check points than a standard asks "
            "for, it says so.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it, and check points that did not shape it: "
            "a point layer, or a CSV file with the columns name, easting, northing, height and, where known, sigma_h, "
            "sigma_v and cover, in the CRS of the surface and its units. With neither, the check shots among the "
            "survey's points are taken (rejected as check_shot): those are of the same receiver, so the result is an "
            "internal check and no test by a standard.</p>"
            "<p><b>Cover:</b> words such as hard, bare, short grass count as non-vegetated; tall grass, crops, brush, "
            "forest as vegetated. The two are reported apart.</p>"
            "<p><b>Plan:</b> with the survey's points, marks of the same name in both tell the accuracy in plan.</p>"
            "<p><b>What can go wrong:</b> points from the same base station, pole or geoid share its errors and hide "
            "them. The sentences follow the standards in meaning; compare them with your copy before you sign. A "
            "licensed professional decides what may be stated for a contract.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        add_check_parameters(self, translate("hummock", "In place of the layer."), cover=True)
        self.add(
            QgsProcessingParameterFeatureSource(
                "POINTS", translate("hummock", "Survey points"), [POINT_SOURCE], optional=True
            ),
            translate("hummock", "For the accuracy in plan, and for the survey's own check shots."),
        )
        self.add(
            number("WANTED", translate("hummock", "Vertical class wanted (cm RMSE)"), None, 1e-3),
            translate("hummock", "Empty: the finest class of whole centimetres that is met."),
        )
        self.add_surface_crs()
        self._add_outputs()

    def _add_outputs(self) -> None:
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Check points compared"), POINT_SOURCE),
            translate("hummock", "Each check point with the height of the surface there; off_m is surface less check."),
        )
        self.add_page(
            "HTML",
            translate("hummock", "Statement (HTML)"),
            translate("hummock", "The statement with its statistics, a map and every check point."),
        )
        self.addOutput(QgsProcessingOutputString("STATEMENT", translate("hummock", "Statement")))
        self.add_numbers(
            ("COUNT", translate("hummock", "Check points on the surface")),
            ("MEAN", translate("hummock", "Mean difference, the bias (m)")),
            ("RMSE", translate("hummock", "RMSE (m)")),
            ("ACCURACY_95", translate("hummock", "Accuracy at 95 % by NSSDA (m)")),
            ("CLASS_CM", translate("hummock", "Finest class met (cm)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        progress(0.3, "points")
        points = self._survey(tin, parameters, context, feedback, part(progress, 0.3, 0.5))
        checks = self._checks(tin, points, parameters, context, feedback, part(progress, 0.5, 0.6))
        pairs: Optional[PlanPairs] = None
        if points is not None and checks.independent:
            pairs = pair_by_name(points, checks)
        wanted = optional_number(self, parameters, "WANTED", context)
        found = accuracy_statement(tin, checks, wanted_cm=wanted, pairs=pairs)
        progress(0.8, "layers")
        report(found.remarks, feedback)
        for each in found.statements:
            feedback.pushInfo(tell(each))
        sink, place = self.parameterAsSink(
            parameters, "OUTPUT", context, comparison_fields(), POINT_Z, qgis_crs(tin.crs)
        )
        write_comparison(found.comparison, tin.crs, sink)
        dress_vector(context, place, CHECK_POINTS)
        results: Dict[str, Any] = {
            "OUTPUT": place,
            "STATEMENT": "\n".join(say(each) for each in found.statements),
            **_numbers(found),
        }
        path = self.parameterAsFileOutput(parameters, "HTML", context)
        if path:
            from ..core.report.accuracy_page import write_accuracy  # brings matplotlib, for which QGIS need not wait

            write_accuracy(found, tin, path, *page_language())
            results["HTML"] = path
        return results

    def _survey(
        self,
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Optional[PointSet]:
        source = optional_source(self, parameters, "POINTS", context)
        if source is None:
            return None
        label = source.sourceName() or "POINTS"
        same_crs(source, tin, label)
        return read_points_layer(source, PointColumns(), label, feedback, progress)

    def _checks(
        self,
        tin: Tin,
        points: Optional[PointSet],
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> CheckPoints:
        """From the layer, the file, or the survey's check shots."""
        given = chosen_checks(self, tin, parameters, context, feedback, progress)
        if given is not None:
            return given
        if points is None:
            raise QgsProcessingException(
                translate("hummock", "There are no check points; give a layer or a file of them, or the survey.")
            )
        return check_shots(points)


def _numbers(found: AccuracyStatement) -> Dict[str, Any]:
    """Of open ground; of all check points where there is none."""
    told = found.non_vegetated or found.together
    numbers: Dict[str, Any] = {
        "COUNT": told.count, "MEAN": told.mean, "RMSE": told.rmse, "ACCURACY_95": told.accuracy_95
    }  # fmt: skip
    if found.class_cm is not None:
        numbers["CLASS_CM"] = found.class_cm
    return numbers
