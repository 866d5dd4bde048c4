// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

// As core.h, for the window. Only what most files read: with the whole of QtWidgets every file, even an empty one, pays two
// seconds for the templates of its inline functions.
#include "cmake/precompiled/core.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>
