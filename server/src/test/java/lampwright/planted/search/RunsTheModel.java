package lampwright.planted.search;

import ai.onnxruntime.OrtEnvironment;

/** Only meaning may run the model. */
record RunsTheModel(OrtEnvironment environment) {}
