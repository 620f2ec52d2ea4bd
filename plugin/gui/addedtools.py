"""Tools that the user adds to a job: run in their own dialogs, then steps of it."""

from __future__ import annotations

from typing import Any, Callable, Dict, Optional

from qgis.core import QgsApplication, QgsProject
from qgis.PyQt.QtWidgets import QComboBox

from .steps import INPUTS, added_tool
from .toolbook import Tool, ToolBook, own_source


class AddedTools:
    """The part of the desk that does so; ``more`` names an algorithm, ``book`` holds the tools."""

    book: ToolBook
    more: QComboBox
    _keep: Callable[[], None]
    show_states: Callable[[], None]

    def add_step(self) -> None:
        """The dialog of the algorithm chosen; it becomes a step once it has been run."""
        name = self.more.currentData()
        if name:
            tool = added_tool(self._new_tool(name))
            self._open_dialog(tool, tool.parameters(self.book))

    def _new_tool(self, name: str) -> Dict[str, Any]:
        """What the job would remember of a tool with this algorithm."""
        number = 1 + max([told["number"] for told in self.book.settings["added"]], default=0)
        algorithm = QgsApplication.processingRegistry().algorithmById(f"hummock:{name}")
        names = [one.name() for one in algorithm.parameterDefinitions()]
        outputs = {
            one.name(): f"{name}_{number}_{one.name().lower()}.{one.defaultFileExtension()}"
            for one in algorithm.destinationParameterDefinitions()
            if one.createByDefault()
        }
        inputs = [one for one in INPUTS if one in names and one not in outputs]
        return {"key": f"{name} {number}", "number": number, "algorithm": name, "inputs": inputs, "outputs": outputs}

    def _open_dialog(self, tool: Tool, parameters: Dict[str, Any]) -> None:
        import processing

        dialog = processing.createAlgorithmDialog(f"hummock:{tool.algorithm}", parameters)
        if dialog is not None:
            dialog.algorithmFinished.connect(lambda good, results: self._from_dialog(tool, dialog, good, results))
            dialog.show()

    def _from_dialog(self, tool: Tool, dialog: Any, good: bool, results: Dict[str, Any]) -> None:
        """What was run in the dialog counts as the tool's run; one that is new joins the job."""
        if not good or not results:
            return
        if tool.key not in self.book.tools:
            self.book.add(tool)
            self.book.settings["added"].append(self._new_tool(tool.algorithm))
        read = getattr(dialog, "createProcessingParameters", None) or dialog.getParameterValues
        plain = tool.parameters(self.book)
        said = {name: own_source(value, _source_of) for name, value in dict(read()).items()}
        options = {
            name: value
            for name, value in said.items()
            if value != plain.get(name) and isinstance(value, (str, int, float, bool, list))
        }
        self.book.record(tool.key, options, results)
        self._keep()
        self.show_states()

    def take_away(self, key: str) -> None:
        """A tool that was added leaves the job; what it made stays."""
        self.book.remove(key)
        self.book.settings["added"] = [told for told in self.book.settings["added"] if told["key"] != key]
        self._keep()
        self.show_states()


def _source_of(number: str) -> Optional[str]:
    """What the layer of this id is from; None where there is no such layer."""
    layer = QgsProject.instance().mapLayer(number)
    return None if layer is None else str(layer.source())
