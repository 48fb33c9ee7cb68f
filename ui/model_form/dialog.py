"""The form about the models of a folder: one model at a time, checked as it is typed."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from harmonizer.facts_form import FIELDS, Form, problems, say
from ui.controls.buttons import FlatButton
from ui.dress import Dress
from ui.model_form.facts_file import FolderForms
from ui.model_form.form_field import FieldEditor
from ui.words import Words

_ACROSS: Final = 3
_GROUPS: Final = {
    "supplier": "form-group-model",
    "kind": "form-group-what",
    "foam_thickness": "form-group-foam",
    "definitions.chest": "form-group-where",
    "adjusters.chest.in": "form-group-adjusters",
    "elastic.relaxed": "form-group-elastic",
    "recalled": "form-group-house",
}
"""The first field of each group, and its heading."""


class ModelForm(QDialog):
    """Fills in what charts do not say.

    Signals:
        wanted_save(object): the forms, all without problems, are to be written.
    """

    wanted_save = Signal(object)

    def __init__(self, held: FolderForms, words: Words, dress: Dress, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._say = words.wording.say
        self._words = words
        self._dress = dress
        self._forms = [dict(form) for form in held.forms]
        self._at = held.first
        self.fields: dict[str, FieldEditor] = {}
        self.models = QComboBox(self)
        self.says = QLabel(self)
        self.save = FlatButton(self._say("questions", "form-save"), self, urgent=True)
        self.setWindowTitle(self._say("questions", "form-title"))
        self._build()
        self._show_models()
        self._show_form(self._at)

    def _build(self) -> None:
        px = self._dress.type_.px
        new = FlatButton(self._say("questions", "form-new"), self)
        new.clicked.connect(self._add_model)
        close = FlatButton(self._say("questions", "form-close"), self)
        close.clicked.connect(self.reject)
        self.save.clicked.connect(self._save)
        self.models.currentIndexChanged.connect(self._show_form)
        self.models.setAccessibleName(self._say("questions", "form-models"))
        top = QHBoxLayout()
        top.setSpacing(px(8))
        top.addWidget(self.models, 1)
        top.addWidget(new)
        foot = QHBoxLayout()
        foot.setSpacing(px(8))
        self.says.setWordWrap(True)
        foot.addWidget(self.says, 1)
        foot.addWidget(close)
        foot.addWidget(self.save)
        column = QVBoxLayout(self)
        column.setContentsMargins(px(16), px(14), px(16), px(14))
        column.setSpacing(px(10))
        column.addLayout(top)
        column.addWidget(self._fields(), 1)
        column.addLayout(foot)
        self.resize(px(820), px(620))

    def _fields(self) -> QWidget:
        px = self._dress.type_.px
        area = QScrollArea(self)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setWidgetResizable(True)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        inner = QWidget(area)
        column = QVBoxLayout(inner)
        column.setContentsMargins(0, 0, px(12), 0)
        column.setSpacing(px(6))
        grid, at = QGridLayout(), 0
        for field in FIELDS:
            if field.key in _GROUPS:
                grid, at = self._group(self._say("questions", _GROUPS[field.key]), column), 0
            editor = FieldEditor(field, self._words, self._dress, inner)
            editor.changed.connect(self._field_changed)
            self.fields[field.key] = editor
            grid.addWidget(editor, at // _ACROSS, at % _ACROSS)
            at += 1
        column.addStretch(1)
        area.setWidget(inner)
        return area

    def _group(self, heading: str, column: QVBoxLayout) -> QGridLayout:
        """A heading, and room for its fields below it."""
        px = self._dress.type_.px
        title = QLabel(heading, self)
        title.setFont(self._dress.type_.strong)
        title.setContentsMargins(0, px(6), 0, 0)
        grid = QGridLayout()
        grid.setHorizontalSpacing(px(14))
        grid.setVerticalSpacing(px(8))
        for each in range(_ACROSS):
            grid.setColumnStretch(each, 1)
        column.addWidget(title)
        column.addLayout(grid)
        return grid

    # What is shown

    def _show_models(self) -> None:
        with QSignalBlocker(self.models):
            self.models.clear()
            for form in self._forms:
                named = form.get("model", "").strip()
                self.models.addItem(named or self._say("questions", "form-nameless"))
            self.models.setCurrentIndex(self._at)

    def _show_form(self, at: int) -> None:
        if not 0 <= at < len(self._forms):
            return
        self._at = at
        for key, editor in self.fields.items():
            editor.show_text(self._forms[at].get(key, ""))
        self._check()

    def _add_model(self) -> None:
        """A further model of the same maker and file."""
        like = self._forms[self._at]
        kept = ("supplier", "file", "season")
        self._forms.append({key: like[key] for key in kept if key in like})
        self._at = len(self._forms) - 1
        self._show_models()
        self._show_form(self._at)
        self.fields["model"].line.edit.setFocus()

    # What is done

    def _field_changed(self, key: str) -> None:
        text = self.fields[key].text.strip()
        form = self._forms[self._at]
        if text:
            form[key] = text
        else:
            form.pop(key, None)
        if key == "model":
            name = text or self._say("questions", "form-nameless")
            self.models.setItemText(self._at, name)
        self._check()

    def _check(self) -> None:
        """What the fields say together; saving waits until every form is in order."""
        found = problems(self._forms[self._at])
        for key, editor in self.fields.items():
            reason = found.get(key)
            editor.show_fault(say(key, reason, self._words.wording) if reason else "")
        faulty = sum(bool(problems(form)) for form in self._forms)
        self.save.setEnabled(not faulty)
        self.save.urgent = not faulty
        said = self._say("questions", "form-faulty", count=faulty) if faulty else ""
        self.says.setText(said or self._say("questions", "form-checked"))

    def _save(self) -> None:
        forms: list[Form] = list(self._forms)
        self.wanted_save.emit(forms)
