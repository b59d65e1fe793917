import type { Catalogue } from '../../text.ts';

export const prepare: Catalogue = {
  'This is general information, not medical advice. If you have a condition, take medicine, are pregnant or feel unsure, ask a doctor first.':
    'Esto es información general, no consejo médico. Si tienes alguna enfermedad, tomas medicinas, estás embarazada o tienes dudas, pregunta antes a un médico.',
  'Chest pain, faintness, an odd heartbeat or breath that does not come back: stop, get help, do not run on.':
    'Dolor en el pecho, mareo, un latido extraño o un aliento que no vuelve: para, pide ayuda, no sigas corriendo.',
  'With a fever, an infection or pain that changes your stride, do not race. There will be another one.':
    'Con fiebre, una infección o un dolor que cambia tu zancada, no compitas. Habrá otra.',
  'Race day is for what you have practised: no new food, drink, gel, shoes or kit.':
    'El día de carrera es para lo practicado: ni comida, ni bebida, ni gel, ni zapatillas, ni ropa nuevas.',
  'Gels can upset the stomach. Take them with water, slowly, and only the kind that you know from training.':
    'Los geles pueden sentar mal al estómago. Tómalos con agua, despacio, y solo los que conoces de entrenar.',
  'With diabetes or another condition of blood sugar, settle food, gels and timing with your doctor beforehand.':
    'Con diabetes u otro problema de azúcar en sangre, acuerda antes con tu médico la comida, los geles y los horarios.',
  'Food at stations may hold nuts, milk, gluten or caffeine. If that matters to you, carry your own.':
    'La comida de los avituallamientos puede llevar frutos secos, leche, gluten o cafeína. Si eso te importa, lleva la tuya.',
  'Drink to thirst. Too much is dangerous too: it thins the salt in the blood. Gaining weight over a race is a warning sign.':
    'Bebe según la sed. Demasiado también es peligroso: diluye la sal de la sangre. Ganar peso durante una carrera es señal de alarma.',
  'Do not take anti-inflammatory painkillers (such as ibuprofen) around a race; with hard effort and much drinking they add risk.':
    'No tomes antiinflamatorios (como el ibuprofeno) alrededor de una carrera; con esfuerzo fuerte y mucha bebida añaden riesgo.',
  'Caffeine is not for everybody: leave it out with heart trouble, in pregnancy, with some medicines, or if you have not tried it in training.':
    'La cafeína no es para todos: déjala si tienes problemas de corazón, en el embarazo, con algunas medicinas o si no la has probado entrenando.',
  'In heat, give up the goal time: start slower, take shade and water, and stop if you feel dizzy, sick, confused or cold.':
    'Con calor, renuncia al tiempo objetivo: sal más lento, busca sombra y agua, y para si sientes mareo, náuseas, confusión o frío.',
  'On hills, keep the effort and let the pace go. A fast descent on tired legs is where people fall.':
    'En las cuestas mantén el esfuerzo y suelta el ritmo. Una bajada rápida con piernas cansadas es donde la gente se cae.',
  'Raise training slowly, one thing at a time, and rest when something hurts. After a long break, ask a doctor before hard training.':
    'Sube el entreno despacio, una cosa cada vez, y descansa cuando algo duela. Tras una pausa larga, pregunta a un médico antes de entrenar fuerte.',
  "Your race's rules and the local law decide what you may wear, carry and listen to, and where you may throw things away.":
    'Las reglas de tu carrera y la ley del lugar deciden qué puedes llevar puesto, cargar y escuchar, y dónde puedes tirar cosas.',
  'Warm up and walk to the start off the road, and keep your ears open to traffic.':
    'Calienta y ve a la salida fuera de la calzada, y deja los oídos abiertos al tráfico.',
  'An estimate from few facts, not a promise. How you feel on the day decides.':
    'Una estimación a partir de pocos datos, no una promesa. El día decide cómo te sientes.',
  '{pace} per km': '{pace} por km',
  '{pace} per mile': '{pace} por milla',
  '{n} km': '{n} km',
  '{n} miles': { one: '{n} milla', other: '{n} millas' },
  'half marathon': 'media maratón',
  marathon: 'maratón',
  'less than 1 in 20': 'menos de 1 entre 20',
  'more than 19 in 20': 'más de 19 entre 20',
  'about even': 'más o menos la mitad',
  'about {n} in 10': 'unas {n} entre 10',
  '{source} (recalled, not checked)': '{source} (de memoria, sin comprobar)',
  'common practice, no source': 'práctica común, sin fuente',
  'Next: {step}': 'Siguiente: {step}',
  'Yours now, without stations and gels. Undo stands under Plan.':
    'Ahora es tuyo, sin avituallamientos ni geles. Deshacer está en Plan.',
  'This is the plan of the demo race, with its stations and gels.':
    'Este es el plan de la carrera de muestra, con sus avituallamientos y geles.',
  'Make it my own': 'Hacerlo mío',
};
